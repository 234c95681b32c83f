package setwright.job.note;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.job.Pattern;
import setwright.job.Pattern.Datum;
import setwright.job.Pattern.Place;
import setwright.job.Placed;
import setwright.job.note.Draft.Said;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;

/** Where the things of a note are on their side. */
final class Patterns {
    private final Draft draft;
    private final Side side;

    /** Two distances that stand alone behind the thing itself: a rectangle. */
    private final List<Measured> rectangle;

    Patterns(Draft draft, Side side, List<Measured> rectangle) {
        this.draft = draft;
        this.side = side;
        this.rectangle = rectangle;
    }

    /** The side that a note means: the top where it names none, as a plan view does. */
    static Side side(Draft draft) {
        if (draft.side != null) {
            refuseSecond(draft.sides, 0);
            return draft.side;
        }
        refuseSecond(draft.sides, 1);
        Side named = draft.sides.isEmpty() ? null : Corners.side(draft.sides.get(0));
        return named == null ? Side.TOP : named;
    }

    private static void refuseSecond(List<Piece> sides, int allowed) {
        if (sides.size() > allowed) {
            throw Halt.refused(
                    Saying.at(sides.get(allowed)) + " is a second side; a note is about one, as on front.",
                    sides.get(allowed));
        }
    }

    /** How many holes there are, as far as the note says. */
    int count() {
        return draft.count > 0 ? draft.count : Math.max(1, draft.places.size());
    }

    /** The pattern; null where the note does not say enough, for which it asks. */
    @Nullable
    Pattern pattern() {
        if (draft.circle != null) {
            return circle(draft.circle);
        }
        if (!rectangle.isEmpty()) {
            return rectangle();
        }
        if (!draft.pitch.isEmpty()) {
            return pitched();
        }
        if (!draft.places.isEmpty()) {
            return points();
        }
        return count() == 1 && draft.says(Said.CENTRED) ? new Pattern.Points(Datum.CENTRE, List.of(nought())) : null;
    }

    private Pattern circle(Measured circle) {
        if (draft.count == 0) {
            throw Asks.at(draft, draft.note.length(), ", ", "How many holes are on the circle?", "4 off");
        }
        return new Pattern.BoltCircle(
                from(), middle(), draft.count, circle.length().nominal(), start());
    }

    private Typed<Angle> start() {
        return draft.turned == null ? draft.numbers.reading().angle("0") : draft.turned;
    }

    private Pattern rectangle() {
        if (rectangle.size() != 2 || (draft.count != 0 && draft.count != 4)) {
            throw Halt.refused(
                    Saying.at(rectangle.get(0).number())
                            + " begins a rectangle, which takes two distances and four holes, as 4x M6 thru, 76 x 36.",
                    rectangle.get(0).number());
        }
        return new Pattern.Grid(
                from(),
                middle(),
                2,
                2,
                rectangle.get(0).length().nominal(),
                rectangle.get(1).length().nominal());
    }

    private Pattern pitched() {
        Typed<Length> first = draft.pitch.get(0).length().nominal();
        Typed<Length> second =
                draft.pitch.size() > 1 ? draft.pitch.get(1).length().nominal() : first;
        int rows = draft.rows > 0 ? draft.rows : 1;
        if (draft.count < 2 || draft.count % rows != 0) {
            throw Halt.refused(
                    "A pitch wants a count of two or more that fills its rows, as 6x M6 thru, 2 rows, pitch 25; "
                            + (draft.count < 2
                                    ? "none stands in the note"
                                    : draft.count + " in " + rows + " rows do not")
                            + ".",
                    draft.pitch.get(0).number());
        }
        if (rows == 1 && !draft.places.isEmpty()) {
            Typed<Angle> along = draft.numbers.reading().angle(draft.says(Said.UPRIGHT) ? "90" : "0");
            return new Pattern.Line(from(), middle(), draft.count, first, draft.turned == null ? along : draft.turned);
        }
        int columns = draft.count / rows;
        boolean upright = draft.says(Said.UPRIGHT);
        return new Pattern.Grid(from(), middle(), upright ? rows : columns, upright ? columns : rows, first, second);
    }

    private Pattern points() {
        if (draft.places.size() != count()) {
            throw Halt.refused(
                    "The note has " + count() + " holes and places for " + draft.places.size()
                            + ", two distances to a place; write one for each hole, as at"
                            + " 12, 12; 88, 12, or a rectangle, as 76 x 36. The decimal sign is a point.",
                    0,
                    draft.note.length());
        }
        return new Pattern.Points(from(), draft.places);
    }

    /** The place of a thing by its middle. */
    Placed placed() {
        if (draft.places.size() > 1) {
            throw Halt.refused(
                    "The note has " + draft.places.size() + " places for one thing; write a note for each.",
                    0,
                    draft.note.length());
        }
        Place middle = middle();
        Typed<Angle> turned = draft.says(Said.UPRIGHT) ? draft.numbers.reading().angle("90") : draft.turned;
        return new Placed(from(), middle.u(), middle.v(), turned);
    }

    private Datum from() {
        return draft.places.isEmpty() ? Datum.CENTRE : Corners.datum(side, draft.corner);
    }

    private Place middle() {
        return draft.places.isEmpty() ? nought() : draft.places.get(0);
    }

    private Place nought() {
        Typed<Length> nought = new Reading(draft.context.units()).length("0");
        return new Place(nought, nought);
    }

    /** What is most likely where the note does not say: a rectangle two diameters in from the edges, a line, a circle. */
    String likely(double diameter) {
        Point3 seen = Asks.seen(draft, side);
        if (count() > 2 && draft.context.isRound() && (side == Side.TOP || side == Side.BOTTOM)) {
            return "on " + Asks.round(draft, seen.x() * 0.7) + " BC";
        }
        return switch (count()) {
            case 1 -> "centred" + new Asks(draft).onSide();
            case 4 -> inset(seen.x(), diameter) + " x " + inset(seen.y(), diameter);
            default -> "in line, pitch " + Asks.round(draft, seen.x() / count());
        };
    }

    private String inset(double across, double diameter) {
        double between = across - 4 * diameter;
        return between > 2 * diameter ? Asks.number(draft, between) : Asks.round(draft, across / 2);
    }
}
