package setwright.plan.pencil;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.plan.cut.CutPlace;
import setwright.plan.cut.HoleChoice;
import setwright.plan.part.Heights;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.shop.Cutter;
import setwright.shop.Machine;

/** Speed and feed of a tool that goes down by the lever: less feed where the table asks too much, then fewer turns. */
record HolePencil(Drafting drafting, Side up, Heights heights) {
    /** Less of the table's feed than this rubs; then fewer turns (common practice). */
    private static final double LEAST_FEED = 0.5;

    /** From one speed of a stepless drive to the next that is tried. */
    private static final double SLOWER = 0.8;

    private static final int SPEEDS = 8;

    /** @param earlier operations of the set-up before it */
    DrawnOperation eased(DrawnOperation draft, List<DrawnOperation> earlier) {
        double wanted = draft.speed().value().inside();
        if (!meant(draft) || wanted <= 0) {
            return draft;
        }
        CutPlace place = place(draft, earlier);
        DrawnOperation last = draft;
        for (double speed : speeds(draft)) {
            DrawnOperation tried = at(draft, speed, speed / wanted);
            double share = HoleChoice.of(up, tried, drafting.rows(), heights, place)
                    .map(HoleChoice::share)
                    .orElse(1.0);
            last = at(draft, speed, Math.max(share, LEAST_FEED) * speed / wanted);
            if (share >= LEAST_FEED) {
                return last;
            }
        }
        return last;
    }

    private static boolean meant(DrawnOperation draft) {
        boolean lever = draft.method().value() == Operation.Method.QUILL_LEVER;
        return lever
                && draft.feed().pencilled()
                && switch (draft.kind()) {
                    case SPOT, DRILL, COUNTERBORE, SPOTFACE, COUNTERSINK -> true;
                    default -> false;
                };
    }

    private DrawnOperation at(DrawnOperation draft, double speed, double times) {
        Drawn<Typed<SpindleSpeed>> turning = speed == draft.speed().value().inside()
                ? draft.speed()
                : new Drawn<>(drafting.speed(speed), Standing.PENCILLED);
        double feed = times * draft.feed().value().inside();
        return times == 1
                ? draft
                : draft.taking(
                        draft.stickOut(),
                        draft.depth(),
                        draft.width(),
                        turning,
                        new Drawn<>(drafting.feed(feed), Standing.PENCILLED));
    }

    /** The drafted speed, then slower ones of the machine. */
    private double[] speeds(DrawnOperation draft) {
        double wanted = draft.speed().value().inside();
        if (!draft.speed().pencilled()) {
            return new double[] {wanted};
        }
        Machine machine = drafting.rows().machine();
        Stream<Double> slower = machine.steps().isEmpty()
                ? DoubleStream.iterate(wanted * SLOWER, speed -> speed * SLOWER)
                        .limit(SPEEDS)
                        .boxed()
                : machine.steps().stream()
                        .map(Typed::inside)
                        .filter(step -> step < wanted * (1 - 1e-3))
                        .sorted(Comparator.reverseOrder());
        return Stream.concat(Stream.of(wanted), slower)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private CutPlace place(DrawnOperation draft, List<DrawnOperation> earlier) {
        double top = heights.startTop();
        Optional<Double> before = earlier.stream()
                .filter(one -> one.kind() == Operation.Kind.DRILL
                        && one.features().stream().anyMatch(draft.features()::contains))
                .flatMap(one -> drafting.rows().cutter(one.cutter().value()).stream())
                .map(Cutter::diameter)
                .map(Typed::inside)
                .max(Double::compare);
        return new CutPlace(top, top - draft.depth().value().inside(), 1, before, true);
    }
}
