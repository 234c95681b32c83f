package setwright.caution;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.quantity.Source;

/**
 * What a caution means, for whoever meets it.
 *
 * @param title in a few words
 * @param sections one for every heading, in their order
 */
public record Page(String slug, String title, List<Section> sections) {
    private static final int COLUMNS = 96;

    public Page {
        sections = List.copyOf(sections);
    }

    /** The fixed headings of every page, in their order; the last is not written on it but counted. */
    public enum Heading {
        CHECKS("What it checks"),
        MATTERS("Why it matters"),
        WORKED_OUT("How it is worked out"),
        TO_DO("What to do"),
        SOURCE("Source"),
        FIRES("How often it fires");

        private final String words;

        Heading(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        static Optional<Heading> of(String line) {
            return Stream.of(values())
                    .filter(heading -> heading.words.equals(line))
                    .findFirst();
        }
    }

    /** One heading with its text, a paragraph in one line. */
    public record Section(Heading heading, String text) {}

    /** The page of a check; empty where no check has that slug. */
    public static Optional<Page> of(String slug) {
        return Checks.slugs().contains(slug) ? Optional.of(read(slug)) : Optional.empty();
    }

    /** Every page, in the order of {@link Checks#ALL}. */
    public static List<Page> all() {
        return Checks.slugs().stream().map(Page::read).toList();
    }

    public String section(Heading heading) {
        return sections.stream()
                .filter(section -> section.heading() == heading)
                .map(Section::text)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "The page " + slug + " has no \"" + heading.words() + "\"; write it."));
    }

    public Source source() {
        return Source.of(section(Heading.SOURCE));
    }

    /** As printed, at most 96 columns wide. */
    public String text() {
        StringBuilder text = new StringBuilder(slug).append("\n").append(title).append("\n");
        for (Section section : sections) {
            text.append("\n").append(section.heading().words()).append("\n");
            wrapped(section.text())
                    .forEach(line -> text.append("  ").append(line).append("\n"));
        }
        return text.toString();
    }

    private static List<String> wrapped(String paragraph) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > COLUMNS - 2) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static Page read(String slug) {
        try (InputStream packed = Page.class.getResourceAsStream(slug + ".txt")) {
            if (packed == null) {
                throw new IllegalStateException("The check " + slug + " has no page; write " + slug + ".txt.");
            }
            String text = new String(packed.readAllBytes(), StandardCharsets.UTF_8);
            Page written = parsed(slug, text.lines().toList());
            return written.with(new Section(Heading.FIRES, Everyday.counted().sentence(slug)));
        } catch (IOException unread) {
            throw new UncheckedIOException("The page " + slug + " cannot be read.", unread);
        }
    }

    private Page with(Section more) {
        return new Page(
                slug, title, Stream.concat(sections.stream(), Stream.of(more)).toList());
    }

    /** The title in the first line, then every heading on a line of its own with its text below. */
    static Page parsed(String slug, List<String> lines) {
        List<Section> sections = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            Optional<Heading> heading = Heading.of(line);
            if (heading.isPresent()) {
                sections.add(new Section(heading.get(), ""));
            } else if (!line.isBlank()) {
                Section last = sections.remove(sections.size() - 1);
                sections.add(new Section(last.heading(), (last.text() + " " + line).strip()));
            }
        }
        return new Page(slug, lines.get(0), sections);
    }
}
