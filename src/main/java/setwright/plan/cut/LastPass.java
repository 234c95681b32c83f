package setwright.plan.cut;

import setwright.cutting.Direction;
import setwright.cutting.MillingCut;
import setwright.job.Feature;
import setwright.job.Keyseat;
import setwright.job.Operation;
import setwright.job.Slot;
import setwright.rigidity.WallLeft;

/**
 * The pass that leaves the surface: the last one, over the whole wall, where one is planned, else the pass that is taken all
 * along.
 *
 * @param width of that pass, mm
 * @param depth along the axis, mm
 * @param finishing whether it is a pass of its own
 */
record LastPass(CutQuestion question, MillingCut rough, double width, double depth, boolean finishing) {
    /** A slot that is no wider than its cutter by this is cut at size, mm (common practice). */
    private static final double AT_SIZE = 0.02;

    private static final double THINNEST = 0.001;

    static LastPass of(CutQuestion question, MillingCut rough) {
        double stock = question.operation().finish().value().inside();
        boolean own = stock > 0 && question.operation().lastPass().value() != Operation.LastPass.NONE;
        if (question.operation().kind() == Operation.Kind.FACE) {
            return new LastPass(question, rough, rough.width(), own ? stock : rough.axialDepth(), own);
        }
        return own
                ? new LastPass(question, rough, stock, whole(question, rough), true)
                : new LastPass(question, rough, lane(question, rough), rough.axialDepth(), false);
    }

    /** All of the wall at once, as far as the flutes reach. */
    private static double whole(CutQuestion question, MillingCut rough) {
        double high = question.place().depth();
        return Math.max(
                rough.axialDepth(),
                Math.min(high, question.cutter().fluteLength().inside()));
    }

    /** The width that the cutter takes beside the wall: a lane, what a slot is wider, or the whole cutter. */
    private static double lane(CutQuestion question, MillingCut rough) {
        double lane = question.operation().width().value().inside();
        double wider = wider(question);
        double least = wider > AT_SIZE ? Math.min(lane, wider) : lane;
        return Math.min(least, rough.cutter().diameter());
    }

    /** By how much a slot is wider than its cutter, mm; 0 for everything else. */
    private static double wider(CutQuestion question) {
        return question.features()
                .mapToDouble(feature ->
                        slotWidth(feature) - question.cutter().diameter().inside())
                .max()
                .orElse(0);
    }

    private static double slotWidth(Feature feature) {
        return switch (feature.kind()) {
            case SLOT -> ((Slot) feature).width().nominal().inside();
            case KEYSEAT -> ((Keyseat) feature).width().nominal().inside();
            default -> 0;
        };
    }

    /** Whether the cutter cuts both sides at once. */
    boolean slot() {
        return !finishing && wider(question) <= AT_SIZE;
    }

    /** Whether it is run once more at the same setting. */
    boolean sprung() {
        return question.operation().lastPass().value() == Operation.LastPass.WITH_SPRING_PASS;
    }

    /** The wall that it leaves. */
    double wall() {
        return question.operation().direction().value() == Operation.Direction.CLIMB
                ? WallLeft.CLIMB
                : WallLeft.CONVENTIONAL;
    }

    MillingCut cut() {
        return facing() ? rough.withDepth(Math.max(depth, THINNEST)) : ofWidth(width, depth);
    }

    /** The passes before it, beside the same wall. */
    MillingCut roughing() {
        return ofWidth(lane(question, rough), rough.axialDepth());
    }

    MillingCut ofWidth(double wide, double deep) {
        double across = Math.min(Math.max(wide, THINNEST), rough.cutter().diameter());
        return MillingCut.of(
                rough.cutter(), direction(across), new MillingCut.Section(across, deep), rough.feedPerTooth());
    }

    private Direction direction(double across) {
        if (across >= rough.cutter().diameter() * (1 - 1e-9)) {
            return Direction.SLOT;
        }
        return question.operation().direction().value() == Operation.Direction.CLIMB
                ? Direction.CLIMB
                : Direction.CONVENTIONAL;
    }

    private boolean facing() {
        return question.operation().kind() == Operation.Kind.FACE;
    }
}
