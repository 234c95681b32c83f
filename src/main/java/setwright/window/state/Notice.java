package setwright.window.state;

import java.util.List;

/**
 * Something that has to be read before it goes on: why a file could not be read or written.
 *
 * @param lines one for every problem, with its place
 */
public record Notice(String title, List<String> lines) {
    public static final Notice NONE = new Notice("", List.of());

    public Notice {
        lines = List.copyOf(lines);
    }
}
