package setwright.plan.cut;

import java.util.Optional;
import setwright.cutting.Direction;
import setwright.job.Divided;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.job.Slit;
import setwright.job.WoodruffSeat;
import setwright.plan.part.Lying;
import setwright.plan.part.MilledWidth;
import setwright.shop.BoredCutter;
import setwright.shop.CornerRounder;
import setwright.shop.Cutter;
import setwright.shop.KeyseatCutter;

/**
 * What stands in the way of a milled operation's cutter in one pass, mm.
 *
 * @param diameter of the edges that cut
 * @param width across the feed
 * @param depth along the axis
 * @param passes in depth and side by side
 */
record MilledSection(double diameter, double width, double depth, Direction direction, int passes) {
    /** Empty where the drawing does not state what a saw, a seat cutter or a form cutter sinks to. */
    static Optional<MilledSection> of(CutQuestion question) {
        return switch (question.operation().kind()) {
            case WOODRUFF, SAW, FORM ->
                question.place().runs() > 0 ? sunk(question).map(sunk -> ofDisc(question, sunk)) : Optional.empty();
            default -> question.place().runs() > 0 ? Optional.of(new FromPath(question).section()) : Optional.empty();
        };
    }

    /** How far a disc sinks into the side of the work. */
    private static Optional<Double> sunk(CutQuestion question) {
        return question.features()
                .findFirst()
                .flatMap(feature -> sunk(question, feature))
                .filter(depth -> depth > 0);
    }

    private static Optional<Double> sunk(CutQuestion question, Feature feature) {
        return switch (feature.kind()) {
            case WOODRUFF_SEAT -> Optional.of(fromCrown((WoodruffSeat) feature));
            case SLIT ->
                Optional.ofNullable(((Slit) feature).depth())
                        .map(depth -> depth.nominal().inside())
                        .or(() -> Optional.of(through(question, feature)));
            case DIVIDED -> Optional.of(((Divided) feature).depth().nominal().inside());
            default -> Optional.empty();
        };
    }

    private static double through(CutQuestion question, Feature feature) {
        return Lying.of(question.rows().job().plan().blank().envelope(), feature.side(), 0)
                .upright()
                .nominal()
                .inside();
    }

    /** The side of a seat begins lower than the crown by the rise of the arc over its width. */
    private static double fromCrown(WoodruffSeat seat) {
        double radius = seat.shaft().nominal().inside() / 2;
        double half = seat.width().nominal().inside() / 2;
        return seat.depth().nominal().inside() + radius - Math.sqrt(Math.max(0, radius * radius - half * half));
    }

    private static MilledSection ofDisc(CutQuestion question, double sunk) {
        Cutter cutter = question.cutter();
        DrawnOperation operation = question.operation();
        double diameter = cutter.diameter().inside();
        double pass = operation.width().pencilled()
                ? sunk
                : Math.min(sunk, operation.width().value().inside());
        double width = Math.min(pass, diameter / 2);
        int passes = (int) Math.max(1, Math.ceil(sunk / width - 1e-9));
        return new MilledSection(diameter, width, disc(cutter), direction(question), passes);
    }

    private static double disc(Cutter cutter) {
        return switch (cutter.form()) {
            case KEYSEAT_CUTTER -> ((KeyseatCutter) cutter).width().inside();
            case SLITTING_SAW, FORM_CUTTER, SHELL_MILL ->
                ((BoredCutter) cutter).width().inside();
            default -> cutter.fluteLength().inside();
        };
    }

    private static Direction direction(CutQuestion question) {
        return question.operation().direction().value() == Operation.Direction.CLIMB
                ? Direction.CLIMB
                : Direction.CONVENTIONAL;
    }

    /** The section of an operation whose way past the work is known. */
    private record FromPath(CutQuestion question) {
        MilledSection section() {
            Direction direction =
                    width() >= diameter() * (1 - 1e-9) ? Direction.SLOT : MilledSection.direction(question);
            return new MilledSection(diameter(), width(), depth(), direction, passes());
        }

        /** A cone cuts a chamfer with what of it lies beside the wall. */
        private double diameter() {
            return question.operation().kind() == Operation.Kind.CHAMFER
                    ? 2
                            * (MilledWidth.besideWall(question.cutter())
                                    + question.operation().width().value().inside())
                    : question.cutter().diameter().inside();
        }

        /** The first round of a pocket is cut in the full. */
        private double width() {
            double asked = question.operation().width().value().inside();
            if (question.cutter() instanceof CornerRounder rounder) {
                return Math.min(asked, rounder.radius().inside());
            }
            return question.operation().kind() == Operation.Kind.POCKET ? diameter() : Math.min(asked, diameter());
        }

        private double depth() {
            double pass = question.operation().depth().value().inside();
            double whole = question.place().depth();
            return facing() ? pass : Math.min(pass, Math.max(whole, 0.01));
        }

        private boolean facing() {
            return question.operation().kind() == Operation.Kind.FACE;
        }

        private int passes() {
            if (!facing()) {
                return question.place().runs();
            }
            double allowance = Math.max(
                    question.heights().startTop() - question.heights().finishedTop(),
                    question.place().depth());
            int lanes = (int) Math.ceil(question.heights().depth() / width() - 1e-9);
            return Math.max(1, (int) Math.ceil(allowance / depth() - 1e-6)) * lanes;
        }
    }

    /** Whether one lane covers the whole face. */
    boolean coversFace(CutQuestion question) {
        return question.operation().kind() == Operation.Kind.FACE
                && question.heights().depth() <= width * (1 + 1e-9);
    }
}
