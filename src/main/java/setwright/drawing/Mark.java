package setwright.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** One mark of a drawing, in millimetres, x to the right and y up. */
public sealed interface Mark {
    Kind kind();

    /** What it covers, without its letters. */
    PlanBox box();

    Mark moved(Point2 by);

    /** The kinds of mark. */
    enum Kind {
        LINE,
        SHAPE,
        ROUND,
        HATCHED,
        TEXT,
        DIMENSION,
        CALL_OUT,
        LADDER,
        DETAIL
    }

    /** Straight strokes one after the other. */
    record Line(LineRole role, List<Point2> points) implements Mark {
        public Line {
            points = List.copyOf(points);
        }

        public static Line of(LineRole role, Point2... points) {
            return new Line(role, List.of(points));
        }

        @Override
        public Kind kind() {
            return Kind.LINE;
        }

        @Override
        public PlanBox box() {
            return Moved.box(points);
        }

        @Override
        public Line moved(Point2 by) {
            return new Line(role, Moved.all(points, by));
        }
    }

    /** An area filled, without its outline. */
    record Shape(Fill fill, List<Point2> corners) implements Mark {
        public Shape {
            corners = List.copyOf(corners);
        }

        @Override
        public Kind kind() {
            return Kind.SHAPE;
        }

        @Override
        public PlanBox box() {
            return Moved.box(corners);
        }

        @Override
        public Shape moved(Point2 by) {
            return new Shape(fill, Moved.all(corners, by));
        }
    }

    /** A circle; filled where a fill is given. */
    record Round(LineRole role, @Nullable Fill fill, Point2 centre, double radius) implements Mark {
        @Override
        public Kind kind() {
            return Kind.ROUND;
        }

        @Override
        public PlanBox box() {
            return PlanBox.of(centre, centre).grown(radius);
        }

        @Override
        public Round moved(Point2 by) {
            return new Round(role, fill, centre.plus(by), radius);
        }
    }

    /** An area hatched. */
    record Hatched(Hatch hatch, List<Point2> corners) implements Mark {
        public Hatched {
            corners = List.copyOf(corners);
        }

        @Override
        public Kind kind() {
            return Kind.HATCHED;
        }

        @Override
        public PlanBox box() {
            return Moved.box(corners);
        }

        @Override
        public Hatched moved(Point2 by) {
            return new Hatched(hatch, Moved.all(corners, by));
        }
    }

    /** Letters at a place. */
    record Text(Point2 at, Anchor anchor, Lettering lettering, String text) implements Mark {
        @Override
        public Kind kind() {
            return Kind.TEXT;
        }

        @Override
        public PlanBox box() {
            return PlanBox.of(at, at);
        }

        @Override
        public Text moved(Point2 by) {
            return new Text(at.plus(by), anchor, lettering, text);
        }
    }

    /** Which point of the letters is at their place. */
    enum Anchor {
        LEFT,
        MIDDLE,
        RIGHT,
        /** Above the place, in the middle. */
        ABOVE,
        /** Below the place, in the middle. */
        BELOW
    }

    /** How large letters are; whoever paints knows in what size people can read them. */
    enum Lettering {
        TITLE,
        PLAIN,
        SMALL
    }

    /**
     * The distance of two places, with its figure.
     *
     * @param aside where the dimension line runs: this step away from the two places; nought: between them
     */
    record Dimension(Point2 from, Point2 to, Point2 aside, String text) implements Mark {
        @Override
        public Kind kind() {
            return Kind.DIMENSION;
        }

        @Override
        public PlanBox box() {
            return PlanBox.of(from, to).and(from.plus(aside)).and(to.plus(aside));
        }

        @Override
        public Dimension moved(Point2 by) {
            return new Dimension(from.plus(by), to.plus(by), aside, text);
        }
    }

    /** Words with a leader to a place; they stand where there is room. */
    record CallOut(Point2 at, String text) implements Mark {
        @Override
        public Kind kind() {
            return Kind.CALL_OUT;
        }

        @Override
        public PlanBox box() {
            return PlanBox.of(at, at);
        }

        @Override
        public CallOut moved(Point2 by) {
            return new CallOut(at.plus(by), text);
        }
    }

    /**
     * The height ladder: a rung for every named level, its words to the left of it.
     *
     * @param x where the ladder stands
     * @param unit of the heights, with what they are counted from
     * @param rungs from the lowest to the highest
     * @param breaks heights at which a length was left out
     */
    record Ladder(double x, String unit, List<Rung> rungs, List<Double> breaks) implements Mark {
        public Ladder {
            rungs = List.copyOf(rungs);
            breaks = List.copyOf(breaks);
        }

        @Override
        public Kind kind() {
            return Kind.LADDER;
        }

        @Override
        public PlanBox box() {
            PlanBox box = PlanBox.EMPTY;
            for (Rung rung : rungs) {
                box = box.and(new Point2(x, rung.y()));
            }
            return box;
        }

        @Override
        public Ladder moved(Point2 by) {
            return new Ladder(
                    x + by.x(),
                    unit,
                    rungs.stream().map(rung -> rung.moved(by)).toList(),
                    breaks.stream().map(y -> y + by.y()).toList());
        }
    }

    /**
     * A level of the ladder.
     *
     * @param name of the thing whose height it is
     * @param figure its height as printed
     * @param y where it is drawn
     * @param reach how far to the right a thin line runs to the thing
     * @param moves true for a level that goes with the tool
     */
    record Rung(String name, String figure, double y, double reach, boolean moves) {
        Rung moved(Point2 by) {
            return new Rung(name, figure, y + by.y(), reach + by.x(), moves);
        }
    }

    /**
     * What lies in a small circle, drawn again larger.
     *
     * @param centre of the small circle
     * @param radius of the small circle
     * @param at centre of the large one
     * @param times how much larger
     */
    record Detail(Point2 centre, double radius, Point2 at, double times, String text) implements Mark {
        @Override
        public Kind kind() {
            return Kind.DETAIL;
        }

        @Override
        public PlanBox box() {
            return PlanBox.of(at, at).grown(radius * times);
        }

        @Override
        public Detail moved(Point2 by) {
            return new Detail(centre.plus(by), radius, at.plus(by), times, text);
        }
    }
}
