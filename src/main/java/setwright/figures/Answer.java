package setwright.figures;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** One of the answers of a bench figure. */
public sealed interface Answer {
    String name();

    Kind kind();

    /** The kinds of answer. */
    enum Kind {
        NUMBER,
        COUNT,
        COUNTS,
        WORDS,
        FLAG,
        ROWS,
        NUMBERS,
        NOTHING
    }

    /**
     * A number with its unit.
     *
     * @param inside in the unit that the program computes in
     * @param unit in which it is answered
     * @param worked how it was worked out; null where there is nothing to work out
     */
    record Number(
            String name, double inside, Unit unit, @Nullable Worked worked) implements Answer {
        /** The number in its unit. */
        public double inUnit() {
            return unit.fromInside(inside);
        }

        @Override
        public Kind kind() {
            return Kind.NUMBER;
        }
    }

    /** A whole number of things. */
    record Count(String name, long count) implements Answer {
        @Override
        public Kind kind() {
            return Kind.COUNT;
        }
    }

    /** Whole numbers of things, in order. */
    record Counts(String name, List<Integer> counts) implements Answer {
        public Counts {
            counts = List.copyOf(counts);
        }

        @Override
        public Kind kind() {
            return Kind.COUNTS;
        }
    }

    /** A name. */
    record Words(String name, String words) implements Answer {
        @Override
        public Kind kind() {
            return Kind.WORDS;
        }
    }

    /** Yes or no. */
    record Flag(String name, boolean yes) implements Answer {
        @Override
        public Kind kind() {
            return Kind.FLAG;
        }
    }

    /** A table: every row has the same cells. */
    record Rows(String name, List<List<Answer>> rows) implements Answer {
        public Rows {
            rows = rows.stream().map(List::copyOf).toList();
        }

        @Override
        public Kind kind() {
            return Kind.ROWS;
        }
    }

    /** Several numbers of one unit, in order. */
    record Numbers(String name, List<Double> inside, Unit unit) implements Answer {
        public Numbers {
            inside = List.copyOf(inside);
        }

        @Override
        public Kind kind() {
            return Kind.NUMBERS;
        }
    }

    /** What does not apply here; the unit is the one that it would have. */
    record Nothing(String name, String unit) implements Answer {
        @Override
        public Kind kind() {
            return Kind.NOTHING;
        }
    }

    /** A worked value under the name of the answer. */
    static Number of(String name, Worked worked, Unit unit) {
        return new Number(
                name,
                worked.inside(),
                unit,
                new Worked(name, worked.inside(), unit, worked.rule(), worked.from(), worked.deciding()));
    }

    /** A number that stands in a table. */
    static Number of(String name, double inside, Unit unit) {
        return new Number(name, inside, unit, null);
    }
}
