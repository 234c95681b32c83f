package setwright.job.note;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Keyseat;
import setwright.job.Pattern;
import setwright.job.Pattern.Datum;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** Refuses what does not fit the blank: what is deeper than it, wider than its side, or beyond it. */
final class Within {
    private static final double SAME_MM = 1e-6;

    private final Feature feature;
    private final Printing printing;
    private final Point3 seen;

    private Within(Feature feature, Printing printing, Point3 seen) {
        this.feature = feature;
        this.printing = printing;
        this.seen = seen;
    }

    /** @throws Halt where it does not fit; nothing is held against a blank that is not known */
    static void blank(Feature feature, NoteContext context) {
        Point3 size = context.size();
        if (size != null) {
            new Within(feature, new Printing(context.units()), feature.side().size(size)).check();
        }
    }

    /** Refuses a depth before anything else is asked. */
    static void depth(@Nullable Size depth, Side side, Draft draft) {
        Point3 size = draft.context.size();
        if (size != null && depth != null) {
            String refusal = tooDeep(depth, side.size(size).z(), new Printing(draft.context.units()));
            if (!refusal.isEmpty()) {
                throw Halt.refused(refusal, 0, draft.note.length());
            }
        }
    }

    private static String tooDeep(Size depth, double thick, Printing printing) {
        String most = printing.of(Measure.LENGTH, thick);
        return depth.nominal().inside() <= thick + SAME_MM
                ? ""
                : "It is " + depth.nominal().text() + " deep, and the blank is " + most + " thick there; up to " + most
                        + ", or thru, is accepted.";
    }

    private void check() {
        switch (feature.kind()) {
            case HOLE -> hole((Hole) feature);
            case SLOT -> slot((Slot) feature);
            case SLIT -> slit((Slit) feature);
            case POCKET -> pocket((Pocket) feature);
            case STEP -> step((Step) feature);
            case T_SLOT -> tSlot((TSlot) feature);
            case KEYSEAT -> keyseat((Keyseat) feature);
            case DOVETAIL -> dovetail((Dovetail) feature);
            case FACE -> most("face leaves", ((Face) feature).across(), seen.z());
            case DIVIDED -> middle(((Divided) feature).axis());
            case CHAMFER, FLATS, ARC_SLOT, RADIUS_END, PROFILE, WOODRUFF_SEAT, INCLINED_FACE -> {}
        }
    }

    private void hole(Hole hole) {
        deep(hole.depth());
        double narrow = Math.min(seen.x(), seen.y());
        most("hole is", hole.size(), narrow);
        if (hole.mouth() != null) {
            deep(hole.mouth().depth());
            most("mouth is", hole.mouth().diameter(), narrow);
        }
        switch (hole.place().kind()) {
            case POINTS ->
                ((Pattern.Points) hole.place())
                        .places()
                        .forEach(place -> at(hole.place().from(), place));
            case GRID -> grid((Pattern.Grid) hole.place(), hole.size().nominal().inside());
            case LINE -> {
                Pattern.Line line = (Pattern.Line) hole.place();
                at(line.from(), line.first());
                span("line of holes", (line.count() - 1) * line.spacing().inside(), diagonal());
            }
            case BOLT_CIRCLE ->
                circle((Pattern.BoltCircle) hole.place(), hole.size().nominal().inside());
        }
    }

    private void grid(Pattern.Grid grid, double diameter) {
        at(grid.from(), grid.middle());
        span("pattern with its holes", (grid.columns() - 1) * grid.spacingU().inside() + diameter, seen.x());
        span("pattern with its holes", (grid.rows() - 1) * grid.spacingV().inside() + diameter, seen.y());
    }

    private void circle(Pattern.BoltCircle circle, double diameter) {
        at(circle.from(), circle.centre());
        span("bolt circle with its holes", circle.diameter().inside() + diameter, Math.min(seen.x(), seen.y()));
    }

    private void slot(Slot slot) {
        deep(slot.depth());
        most("slot is", slot.width(), Math.max(seen.x(), seen.y()));
        lengthwise(slot.length());
        middle(slot.place());
    }

    private void slit(Slit slit) {
        deep(slit.depth());
        lengthwise(slit.length());
        middle(slit.place());
    }

    private void pocket(Pocket pocket) {
        deep(pocket.depth());
        lengthwise(pocket.length());
        lengthwise(pocket.width());
        middle(pocket.place());
    }

    private void step(Step step) {
        deep(step.depth());
        boolean upright = switch (step.edge()) {
            case LEFT, RIGHT -> true;
            case LOW, HIGH -> false;
        };
        most("step is", step.width(), upright ? seen.x() : seen.y());
        most("step is", step.length(), upright ? seen.y() : seen.x());
    }

    private void tSlot(TSlot slot) {
        deep(slot.depth());
        most("head is", slot.headWidth(), Math.max(seen.x(), seen.y()));
        most("head is", slot.headHeight(), slot.depth().nominal().inside());
        lengthwise(slot.length());
        middle(slot.place());
    }

    private void keyseat(Keyseat seat) {
        most("keyseat is", seat.depth(), seat.shaft().nominal().inside() / 2);
        most("keyseat is", seat.width(), seat.shaft().nominal().inside());
        lengthwise(seat.length());
        middle(seat.place());
    }

    private void dovetail(Dovetail tail) {
        deep(tail.depth());
        most("dovetail is", tail.width(), Math.max(seen.x(), seen.y()));
        middle(tail.place());
    }

    private void deep(@Nullable Size depth) {
        String refusal = depth == null ? "" : tooDeep(depth, seen.z(), printing);
        if (!refusal.isEmpty()) {
            throw refused(refusal);
        }
    }

    private void lengthwise(@Nullable Size length) {
        most("length is", length, diagonal());
    }

    private void most(String what, @Nullable Size size, double most) {
        if (size != null && size.nominal().inside() > most + SAME_MM) {
            throw refused("The " + what + " " + size.nominal().text() + ", and the blank has " + mm(most)
                    + " there; up to " + mm(most) + " is accepted.");
        }
    }

    private void span(String what, double span, double most) {
        if (span > most + SAME_MM) {
            throw refused("The " + what + " spans " + mm(span) + ", and the " + Spoken.word(feature.side()) + " has "
                    + mm(most) + " there; up to " + mm(most) + " is accepted.");
        }
    }

    private void middle(Placed place) {
        at(place.from(), new Pattern.Place(place.u(), place.v()));
    }

    private void at(Datum from, Pattern.Place place) {
        beyond(from, place.u().inside(), seen.x(), place.u().text());
        beyond(from, place.v().inside(), seen.y(), place.v().text());
    }

    private void beyond(Datum from, double place, double across, String text) {
        boolean middle = from == Datum.CENTRE;
        double least = middle ? -across / 2 : 0;
        double greatest = middle ? across / 2 : across;
        if (place < least - SAME_MM || place > greatest + SAME_MM) {
            throw refused("The place " + text + " is beyond the " + Spoken.word(feature.side()) + "; from " + mm(least)
                    + " to " + mm(greatest) + " is accepted there.");
        }
    }

    private double diagonal() {
        return StrictMath.hypot(seen.x(), seen.y());
    }

    private String mm(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }

    private Halt refused(String message) {
        return Halt.refused(message, 0, feature.note().length());
    }
}
