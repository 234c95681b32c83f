package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.plan.cut.OperationCut;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/**
 * One milling, one drilling and one tapping operation of the bearing block from inputs to final figures, worked with
 * paper and pocket calculator in the comments; tolerances are those of such a calculation. Formulas and factors: Kienzle
 * with kc1.1 1350, mc 0.21 (tool-maker catalogue 2022 p.111, ISO 513 group P1); drilling after Machinery's Handbook 31st
 * ed. p.1152 with Kd 24000; tapping M D = kc P² d / 8000 (tap-maker formula page), kc 2300 for mild steel, spiral point
 * 0.60 to 0.65 of a hand tap.
 */
class BearingBlockByHandTest {
    private final Plan plan = BearingBlock.plan();

    private OperationCut cut(String id) {
        return plan.cut().operation(id).orElseThrow();
    }

    /**
     * Face mill 63 with 5 square-shouldered inserts, 100 m/min wanted, 660 rev/min in the step pulley, power feed.
     *
     * <pre>
     * wanted   n  = 1000 · 100 / (π · 63)                 = 505 rev/min; steps 325 and 660: 660 is 1.31 times, nearest
     * feed     the table's 0.1 mm eased until four fifths of the power are used: 298 mm/min
     *          fz = 298 / (660 · 5)                       = 0.0903 mm
     * arc      φs = 2 arcsin(52 / 63)                     = 111.3° = 1.942 rad
     * chip     hm = 2 · 0.0903 · 52 / (63 · 1.942)        = 0.0768 mm
     * force    kc = 1350 · 0.0768^-0.21                   = 2314 N/mm²
     * blank 41 at most to 38: 3 mm in 2 passes            = 1.5 mm
     * power    P  = 1.5 · 52 · 298 · 2314 / 60e6          = 0.896 kW
     * torque   M  = 9550 · 0.896 / 660                    = 13.0 N·m
     * of 2 hp · 0.75 = 1.12 kW                            = 80 %
     * time     2 passes of 82 + 63 + 4 mm at 298 mm/min   = 60.0 s, and 2 mm of approach
     * </pre>
     */
    @Test
    void facing_comes_out_as_by_hand() {
        OperationCut face = cut("face1-face");
        assertThat(Unit.RPM.fromInside(face.wantedSpeed().inside())).isCloseTo(505, within(1.0));
        assertThat(Unit.RPM.fromInside(face.speed().inside())).isCloseTo(660, within(0.5));
        assertThat(face.feedPerEdge().inside()).isCloseTo(0.0903, within(0.0005));
        assertThat(face.passes()).isEqualTo(2);
        assertThat(face.depth()).isCloseTo(1.5, within(1e-9));
        assertThat(face.power().inside()).isCloseTo(896, within(9.0));
        assertThat(Unit.N_M.fromInside(face.torque().inside())).isCloseTo(13.0, within(0.15));
        assertThat(plan.time().operation("face1-face").orElseThrow().cutting()).isCloseTo(60.4, within(0.6));
    }

    /**
     * Drill 6.8 by power quill feed.
     *
     * <pre>
     * f  = 85 / 1115                                                    = 0.0762 mm
     * Ff = 0.0762^0.8 = 0.1275   FT = 6.8^0.8 = 4.635   FM = 6.8^1.8 = 31.5
     * c/d 0.18: A = 1.082  B = 1.351  J = 0.0324
     * T  = 0.05 · 24000 · 0.1275 · 4.635 · 1.351 + 0.007 · 24000 · 46.24 · 0.0324 = 958 + 252 = 1210 N
     * M  = 0.000025 · 24000 · 0.1275 · 31.5 · 1.082                     = 2.61 N·m
     * P  = 2.61 · 1115 / 9550                                           = 0.305 kW
     * travel through 38: point 6.8 / (2 tan 59°) = 2.04, over-run 1     = 41.04 mm
     * breaks through its last 41.04 - 38 = 3.04 at half the feed: 3.04 more at the whole
     * time 4 holes · (41.04 + 2 + 3.04) / 85 min                        = 130.1 s
     * </pre>
     */
    @Test
    void drilling_comes_out_as_by_hand() {
        OperationCut drill = cut("hole2-drill");
        assertThat(drill.feedPerEdge().inside()).isCloseTo(0.0762, within(0.0005));
        assertThat(requireNonNull(drill.thrust()).inside()).isCloseTo(1210, within(6.0));
        assertThat(Unit.N_M.fromInside(drill.torque().inside())).isCloseTo(2.61, within(0.02));
        assertThat(drill.power().inside()).isCloseTo(305, within(2.0));
        assertThat(plan.time().operation("hole2-drill").orElseThrow().cutting()).isCloseTo(130.1, within(0.5));
    }

    /**
     * Tap M8, spiral point, under power at 325 rev/min.
     *
     * <pre>
     * M = 2300 · 1.25² · 8 / 8000 = 3.59 N·m by hand tap; · 0.625 = 2.25 N·m
     * P = 2.25 · 325 / 9550       = 0.0765 kW
     * feed 325 · 1.25             = 406 mm/min
     * </pre>
     */
    @Test
    void tapping_comes_out_as_by_hand() {
        OperationCut tap = cut("hole2-tap");
        assertThat(Unit.N_M.fromInside(tap.torque().inside())).isCloseTo(2.25, within(0.02));
        assertThat(tap.power().inside()).isCloseTo(76.5, within(0.8));
        assertThat(Unit.MM_PER_MIN.fromInside(tap.feed().inside())).isCloseTo(406, within(1.0));
    }

    /**
     * Heights: bed 73, parallels 1/2 in = 12.7, so that 38 finished stands 6.7 over the jaws (73 + 44 = 117).
     *
     * <pre>
     * drill 6.8: chuck 100 (its row) and 84 out; lowest point 85.7 - 3.04   = 82.66
     * beside the parallel: hole 11 from the jaw, less 3.4, less 3.175      = 4.42 mm
     * </pre>
     */
    @Test
    void the_parallels_are_chosen_so_that_no_hole_meets_them() {
        OperationRoom drill = plan.room().operation("hole2-drill").orElseThrow();
        double least = drill.packing().stream()
                .filter(under -> under.body().endsWith("parallel"))
                .mapToDouble(OperationRoom.UnderPart::clearance)
                .min()
                .orElseThrow();
        assertThat(least).isCloseTo(4.425, within(0.001));
        assertThat(plan.part().setUp("s1").orElseThrow().heights().finishedTop())
                .isCloseTo(123.7, within(1e-9));
    }

    /**
     * The face pushed along firm smooth jaws: the jaws bear 2 · 0.15 · 15000 = 4500 N along X; square to them the solid jaw
     * bears the cut. 4500 N over the largest force along X is what sliding alone would give; the cut stands 14 mm over
     * the grip and also turns the part, which takes some of it, and packing adds little.
     */
    @Test
    void the_firm_grip_bears_somewhat_less_than_the_friction_of_two_jaws_alone() {
        OperationHold face = plan.hold().operation("face1-face").orElseThrow();
        double along = Math.abs(requireNonNull(cut("face1-face").milling()).peakFeed());
        assertThat(face.factor().expected()).isBetween(0.6 * 4500 / along, 1.05 * 4500 / along);
        assertThat(face.factor().pessimistic()).isLessThan(face.factor().expected() * 0.10 / 0.15 * 0.8);
    }

    @Test
    void showing_the_job_in_inches_changes_neither_its_cutters_nor_its_passes() {
        Plan inch = Planner.plan(
                BearingBlock.job().withPlan(BearingBlock.job().plan().withUnits(UnitSystem.INCH)), BearingBlock.shop());
        assertThat(inch.cut().operation("face1-face").orElseThrow().passes())
                .isEqualTo(cut("face1-face").passes());
        assertThat(inch.time().each())
                .isCloseTo(plan.time().each(), within(0.01 * plan.time().each()));
        assertThat(inch.drawnUp().setUps().get(0).operations())
                .extracting(operation -> operation.cutter().value())
                .isEqualTo(plan.drawnUp().setUps().get(0).operations().stream()
                        .map(operation -> operation.cutter().value())
                        .toList());
    }
}
