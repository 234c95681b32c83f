package setwright.window.model;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Edge;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Plannable;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;
import setwright.shop.Tap;

/** The one feature of the quick check, as large as the cut that was asked. */
record QuickPart(QuickKind kind, Cutter cutter, QuickCut cut, UnitSystem units) {
    private static final String ID = "f1";

    Feature feature(Block blank) {
        return switch (kind) {
            case STEP ->
                new Step(ID, "", Side.TOP, Edge.LOW, Size.of(width()), Size.of(cut.depth()), null, null, GotBy.DIAL);
            case SLOT ->
                new Slot(ID, "", Side.TOP, Size.of(width()), Size.of(cut.depth()), null, middle(), null, GotBy.TOOL);
            case FACE -> new Face(ID, "", Side.TOP, Size.of(across(blank)), null, GotBy.DIAL);
            case SPOT, DRILL -> hole(Hole.Make.PLAIN, null, null);
            case REAM -> hole(Hole.Make.REAMED, null, "H7");
            case TAP -> hole(Hole.Make.TAPPED, cutter instanceof Tap tap ? tap.thread() : null, null);
        };
    }

    /** Depth and width stay as they were typed; a hole has its depth from the feature. */
    Operation depthAndWidth(Operation operation) {
        return switch (kind) {
            case STEP, SLOT, FACE ->
                OperationField.WIDTH.write(
                        OperationField.DEPTH.write(operation, Plannable.inked(cut.depth())), Plannable.inked(width()));
            case SPOT, DRILL, REAM, TAP -> operation;
        };
    }

    private Typed<Length> width() {
        return cut.width().orElse(cutter.diameter());
    }

    private Typed<Length> across(Block blank) {
        double left = blank.height().nominal().inside() - cut.depth().inside();
        return QuickJob.written(Math.max(left, 0), units);
    }

    private Hole hole(
            Hole.Make make,
            @org.jspecify.annotations.Nullable String thread,
            @org.jspecify.annotations.Nullable String fit) {
        Pattern place = new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(nought(), nought())));
        return new Hole(
                ID,
                "",
                Side.TOP,
                make,
                Size.of(cutter.diameter()),
                thread,
                fit,
                Size.of(cut.depth()),
                place,
                null,
                GotBy.TOOL);
    }

    private Placed middle() {
        return new Placed(Pattern.Datum.CENTRE, nought(), nought(), null);
    }

    private Typed<Length> nought() {
        return new Reading(units).length("0");
    }
}
