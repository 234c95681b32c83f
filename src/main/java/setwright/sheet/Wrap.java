package setwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines between words; a word longer than a line is cut. */
final class Wrap {
    private Wrap() {}

    /** At least one line, perhaps empty. */
    static List<String> words(String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() <= width) {
                line += " " + word;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            String rest = word;
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line = rest;
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
