package setwright.file.shape;

import java.util.List;
import setwright.file.json.Json;
import setwright.file.json.Tree;

/** Anything: it is passed on as it stands. */
public record TreeShape() implements Shape {
    @Override
    public String accepted() {
        return "anything";
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        return List.of(new Found(tree, path, tree));
    }

    @Override
    public Object bind(Tree tree) {
        return tree;
    }

    @Override
    public Tree write(Object value) {
        return (Tree) value;
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.flag(true);
    }
}
