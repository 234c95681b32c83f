package setwright.sheet;

import java.util.List;

/** A block of a page, whichever way the page is printed. */
public sealed interface Block {
    Kind kind();

    /** The kinds of block. */
    enum Kind {
        HEADING,
        WORDS,
        PAIRS,
        TABLE,
        ENTRY
    }

    /** A heading over what follows. */
    record Heading(String text) implements Block {
        @Override
        public Kind kind() {
            return Kind.HEADING;
        }
    }

    /** Sentences, each a paragraph. */
    record Words(List<String> paragraphs) implements Block {
        public Words {
            paragraphs = List.copyOf(paragraphs);
        }

        public static Words of(String... paragraphs) {
            return new Words(List.of(paragraphs));
        }

        @Override
        public Kind kind() {
            return Kind.WORDS;
        }
    }

    /** Names with what is said of them. */
    record Pairs(List<Pair> pairs) implements Block {
        public Pairs {
            pairs = List.copyOf(pairs);
        }

        @Override
        public Kind kind() {
            return Kind.PAIRS;
        }
    }

    /** A name with what is said of it. */
    record Pair(String name, String text) {}

    /** Columns under their heads. */
    record Table(List<Column> columns, List<List<String>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "A row of " + row.size() + " cells does not fit " + columns.size() + " columns: " + row);
                }
            }
        }

        @Override
        public Kind kind() {
            return Kind.TABLE;
        }
    }

    /** A column; figures stand to the right. */
    record Column(String head, boolean figures) {
        public static Column words(String head) {
            return new Column(head, false);
        }

        public static Column figures(String head) {
            return new Column(head, true);
        }
    }

    /**
     * A numbered entry.
     *
     * @param aside what stands at the right end of its first line
     */
    record Entry(String number, String head, String aside, List<String> lines) implements Block {
        public Entry {
            lines = List.copyOf(lines);
        }

        @Override
        public Kind kind() {
            return Kind.ENTRY;
        }
    }
}
