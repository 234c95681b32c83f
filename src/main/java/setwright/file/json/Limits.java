package setwright.file.json;

import tools.jackson.core.StreamReadConstraints;

/** How much is read before reading stops: far more than any job or shop needs, and little enough to answer at once. */
final class Limits {
    /** Bytes of a file, characters of a text. */
    static final int DOCUMENT = 10 * 1024 * 1024;

    static final int DEPTH = 60;
    static final int TOKENS = 1_000_000;
    static final int TEXT = 200_000;
    static final int KEY = 1_000;
    static final int NUMBER = 100;

    /** How many problems are written out. */
    static final int PROBLEMS = 100;

    private Limits() {}

    static StreamReadConstraints constraints() {
        return StreamReadConstraints.builder()
                .maxDocumentLength(DOCUMENT)
                .maxNestingDepth(DEPTH)
                .maxTokenCount(TOKENS)
                .maxStringLength(TEXT)
                .maxNameLength(KEY)
                .maxNumberLength(NUMBER)
                .build();
    }

    /** The limit that a reader ran into, from the first words of what it says. */
    static String words(String reader) {
        if (reader.contains("nesting depth")) {
            return "Brackets are nested deeper than " + DEPTH + " here; no job or shop file is nested so deep.";
        }
        if (reader.contains("Name length") || reader.contains("Property name")) {
            return "A key here is longer than " + KEY + " characters; no key of a job or shop is.";
        }
        if (reader.contains("String value")) {
            return "A text here is longer than " + TEXT + " characters; shorten it.";
        }
        if (reader.contains("Number value")) {
            return "A number here has more than " + NUMBER + " digits; shorten it.";
        }
        return "The file holds more than " + TOKENS + " keys, values and brackets; no job or shop file is so long.";
    }
}
