package setwright.file.json;

import java.util.List;
import java.util.Optional;

/**
 * A text read as JSON.
 *
 * @param tree empty where the text is no JSON
 * @param problems a tree may come with problems, such as a key that stands twice
 */
public record TreeRead(Optional<Tree> tree, List<Problem> problems) {
    public TreeRead {
        problems = List.copyOf(problems);
    }

    static TreeRead refused(Problem problem) {
        return new TreeRead(Optional.empty(), List.of(problem));
    }
}
