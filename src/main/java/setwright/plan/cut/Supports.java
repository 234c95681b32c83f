package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.plane.PlanBox;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;

/**
 * What the part lies on.
 *
 * @param under each support seen from above
 */
record Supports(List<PlanBox> under) {
    private static final double TOUCHES = 0.1;

    static Supports of(SetUpStage stage, DrawnHolding holding) {
        boolean vees = holding instanceof DrawnDevice device && device.on() == DeviceHolding.On.V_BLOCKS;
        return new Supports(stage.fixtures().stream()
                .filter(body -> body.role() == Role.PARALLEL || body.role() == Role.PACKING)
                .map(body -> body.solid().box())
                .filter(box -> vees || touches(box, stage.heights()))
                .map(Box::plan)
                .toList());
    }

    /** A bar sinks into its V-blocks; everything else lies on top. */
    private static boolean touches(Box box, Heights heights) {
        return Math.abs(box.zHigh() - heights.partBottom()) < TOUCHES;
    }

    boolean noneUnder(PlanBox plan) {
        return under.stream().noneMatch(one -> one.gap(plan) < TOUCHES);
    }

    /** The air between two supports; of more than two, or of one that reaches through, nothing is said. */
    Optional<Gap> gap() {
        if (under.size() != 2) {
            return Optional.empty();
        }
        PlanBox one = under.get(0);
        PlanBox other = under.get(1);
        double alongX = Math.max(one.xLow(), other.xLow()) - Math.min(one.xHigh(), other.xHigh());
        double alongY = Math.max(one.yLow(), other.yLow()) - Math.min(one.yHigh(), other.yHigh());
        boolean x = alongX > alongY;
        return Math.max(alongX, alongY) <= TOUCHES
                ? Optional.empty()
                : Optional.of(
                        x
                                ? new Gap(true, Math.min(one.xHigh(), other.xHigh()), alongX)
                                : new Gap(false, Math.min(one.yHigh(), other.yHigh()), alongY));
    }

    /**
     * @param alongX whether it runs along X, else Y
     * @param from where it begins, mm
     * @param span mm
     */
    record Gap(boolean alongX, double from, double span) {
        boolean reaches(PlanBox cut) {
            return alongX
                    ? cut.xHigh() > from && cut.xLow() < from + span
                    : cut.yHigh() > from && cut.yLow() < from + span;
        }

        double across(Heights heights) {
            return alongX ? heights.depth() : heights.length();
        }
    }
}
