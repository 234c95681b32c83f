package setwright.caution;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * How often each check says something about set-ups that any toolroom runs without thought, as it was counted.
 *
 * @param setUps how many were looked at
 * @param counts of the checks that said anything
 */
public record Everyday(int setUps, List<Count> counts) {
    private static final String COUNTED = "everyday.txt";
    private static final String SET_UPS = "set-ups";

    public Everyday {
        counts = List.copyOf(counts);
    }

    /**
     * On how many set-ups a check speaks.
     *
     * @param fires as a caution or worse
     * @param notes as a note
     */
    public record Count(String slug, int fires, int notes) {}

    /** As it was counted last; a test holds it to the set-ups. */
    static Everyday counted() {
        try (InputStream packed = Everyday.class.getResourceAsStream(COUNTED)) {
            if (packed == null) {
                throw new IllegalStateException("Nobody counted the everyday set-ups; write " + COUNTED + ".");
            }
            return read(new String(packed.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unread) {
            throw new UncheckedIOException("The counts in " + COUNTED + " cannot be read.", unread);
        }
    }

    static Everyday read(String text) {
        List<String[]> lines = text.lines().map(line -> line.split(" ")).toList();
        return new Everyday(
                Integer.parseInt(lines.get(0)[1]),
                lines.stream()
                        .skip(1)
                        .map(line -> new Count(line[0], Integer.parseInt(line[1]), Integer.parseInt(line[2])))
                        .toList());
    }

    /** The number of set-ups, then a line for every check that speaks: slug, set-ups it fires on, set-ups with a note. */
    String text() {
        StringBuilder text = new StringBuilder(SET_UPS + " " + setUps + "\n");
        counts.forEach(one -> text.append(one.slug() + " " + one.fires() + " " + one.notes() + "\n"));
        return text.toString();
    }

    /** What the page of a check says. */
    String sentence(String slug) {
        Count count = counts.stream()
                .filter(one -> one.slug().equals(slug))
                .findFirst()
                .orElse(new Count(slug, 0, 0));
        String noted = count.notes() == 0 ? "." : "; a note stands on " + count.notes() + " of them.";
        return "On " + count.fires() + " of the " + setUps + " everyday set-ups" + noted;
    }
}
