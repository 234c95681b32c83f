package setwright.job;

import java.util.List;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Where the holes of a feature are, on its side: u to the right and v up as one looks at it squarely. */
public sealed interface Pattern {
    /** Where u and v are counted from. */
    Datum from();

    /** How many holes there are. */
    int holes();

    Kind kind();

    /** The kinds of pattern. */
    enum Kind {
        POINTS,
        GRID,
        LINE,
        BOLT_CIRCLE
    }

    /** Where places on a side are counted from. */
    enum Datum {
        CENTRE,
        LEFT_LOW,
        RIGHT_LOW,
        LEFT_HIGH,
        RIGHT_HIGH
    }

    /** A place on a side. */
    record Place(Typed<Length> u, Typed<Length> v) {}

    /** Single holes, each at its place. */
    record Points(Datum from, List<Place> places) implements Pattern {
        public Points {
            places = List.copyOf(places);
        }

        @Override
        public int holes() {
            return places.size();
        }

        @Override
        public Kind kind() {
            return Kind.POINTS;
        }
    }

    /**
     * Rows and columns about a middle place.
     *
     * @param spacingU distance between columns
     * @param spacingV distance between rows
     */
    record Grid(Datum from, Place middle, int columns, int rows, Typed<Length> spacingU, Typed<Length> spacingV)
            implements Pattern {
        @Override
        public int holes() {
            return columns * rows;
        }

        @Override
        public Kind kind() {
            return Kind.GRID;
        }
    }

    /**
     * Holes at equal distances along a straight line.
     *
     * @param first place of the first
     * @param angle of the line from u, anticlockwise
     */
    record Line(Datum from, Place first, int count, Typed<Length> spacing, Typed<Angle> angle) implements Pattern {
        @Override
        public int holes() {
            return count;
        }

        @Override
        public Kind kind() {
            return Kind.LINE;
        }
    }

    /**
     * Holes at equal angles on a circle.
     *
     * @param start angle of the first from u, anticlockwise
     */
    record BoltCircle(Datum from, Place centre, int count, Typed<Length> diameter, Typed<Angle> start)
            implements Pattern {
        @Override
        public int holes() {
            return count;
        }

        @Override
        public Kind kind() {
            return Kind.BOLT_CIRCLE;
        }
    }
}
