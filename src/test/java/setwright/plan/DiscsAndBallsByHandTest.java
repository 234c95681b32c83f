package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.Edits;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.Slot;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Reading;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/**
 * Saw, Woodruff cutter and ball nose from inputs to final figures, worked on paper in the comments. Kienzle with the kc1.1
 * and mc of a tool-maker catalogue 2022 p.111 (ISO 513 groups N22 and P2); power P = Q kc / 60000 with the mean chip
 * (tool-maker milling catalogue 2021-22, formula page 783), which lies up to 4 % above the integral over the arc.
 */
class DiscsAndBallsByHandTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final Reading READING = new Reading(UnitSystem.METRIC);

    private static Job everyday(String name) {
        return BearingBlock.job(Path.of("demo-jobs/everyday", name + ".setwright.json"), SHOP);
    }

    private static OperationCut cut(Job job, String operation) {
        return Planner.plan(job, SHOP).cut().operation(operation).orElseThrow();
    }

    private static double newtonMetres(OperationCut cut) {
        return Unit.N_M.fromInside(cut.torque().inside());
    }

    private static double feed(OperationCut cut) {
        return Unit.MM_PER_MIN.fromInside(cut.feed().inside());
    }

    private static double speed(OperationCut cut) {
        return Unit.RPM.fromInside(cut.speed().inside());
    }

    /**
     * Saw 100 x 2 of 48 teeth, 25 deep in aluminium (kc1.1 800, mc 0.25), 210 rev/min, 562 mm/min.
     *
     * <pre>
     * feed   fz = 562 / (210 · 48)                  = 0.0558 mm
     * arc    φs = acos(1 - 2 · 25 / 100)            = 1.0472 rad, 1.0472 · 48 / 2π = 8 teeth
     * chip   hm = 2 · 0.0558 · 25 / (100 · 1.0472)  = 0.0266 mm
     * force  kc = 800 · 0.0266^-0.25                = 1981 N/mm²
     * power  P  = 25 · 2 · 562 · 1981 / 60e6        = 0.928 kW
     * torque M  = 9550 · 0.928 / 210                = 42.2 N·m
     * </pre>
     */
    @Test
    void a_saw_through_a_clamp_comes_out_as_by_hand() {
        OperationCut saw = cut(everyday("split-clamp"), "slit1-saw");
        assertThat(speed(saw)).isCloseTo(210, within(0.5));
        assertThat(feed(saw)).isCloseTo(562, within(1.0));
        assertThat(saw.feedPerEdge().inside()).isCloseTo(0.0558, within(0.0001));
        assertThat(requireNonNull(saw.milling()).teethEngaged()).isCloseTo(8, within(1e-6));
        assertThat(saw.power().inside()).isBetween(0.96 * 928, 1.005 * 928);
        assertThat(newtonMetres(saw)).isBetween(0.96 * 42.2, 1.005 * 42.2);
    }

    /**
     * Woodruff cutter 19.05 x 4.7625 of 8 teeth fed straight into a shaft of 25 in C45 (kc1.1 1500, mc 0.22), 5.84 deep at
     * the side of the seat, 325 rev/min, 87 mm/min. At full depth it cuts along its chord.
     *
     * <pre>
     * rise   12.5 - √(12.5² - 2.38125²)             = 0.229 mm, so that it goes 6.069 below the crown
     * arc    2 a, a = acos(1 - 6.069 / 9.525)       = 1.1995 rad, 2 · 1.1995 · 8 / 2π = 3.05 teeth
     * chord  19.05 · sin a                          = 17.75 mm
     * feed   fz = 87 / (325 · 8)                    = 0.03346 mm
     * chip   hm = 0.03346 · 17.75 / (19.05 · 1.1995) = 0.0260 mm
     * force  kc = 1500 · 0.0260^-0.22               = 3348 N/mm²
     * power  P  = 17.75 · 4.7625 · 87 · 3348 / 60e6 = 0.410 kW
     * torque M  = 9550 · 0.410 / 325                = 12.06 N·m
     * </pre>
     */
    @Test
    void a_woodruff_cutter_at_full_depth_comes_out_as_by_hand() {
        OperationCut seat = cut(everyday("woodruff-shaft"), "seat1-woodruff");
        assertThat(speed(seat)).isCloseTo(325, within(0.5));
        assertThat(feed(seat)).isCloseTo(87, within(0.5));
        assertThat(seat.width()).isCloseTo(6.069, within(0.001));
        assertThat(requireNonNull(seat.milling()).teethEngaged()).isCloseTo(3.05, within(0.01));
        assertThat(seat.power().inside()).isBetween(0.97 * 410.5, 1.005 * 410.5);
        assertThat(newtonMetres(seat)).isBetween(0.97 * 12.06, 1.005 * 12.06);
    }

    /** A groove in the aluminium block by the 10 mm ball nose, 2 flutes, at 2720 rev/min and 272 mm/min. */
    private static OperationCut groove(String depth) {
        Slot slot = new Slot(
                "slot1",
                "",
                Side.TOP,
                AluminiumBlock.size("10 mm"),
                AluminiumBlock.size(depth),
                null,
                AluminiumBlock.middle(),
                null,
                GotBy.TOOL);
        Job job = inked(AluminiumBlock.with(slot), OperationField.CUTTER, "ball-nose-carbide-10");
        job = inked(job, OperationField.DEPTH, READING.length(depth));
        job = inked(job, OperationField.SPEED, READING.spindleSpeed("2720 rpm"));
        return cut(inked(job, OperationField.FEED, READING.feed("272 mm/min")), "slot1-slot");
    }

    private static <T> Job inked(Job job, OperationField<T> field, T value) {
        return Edits.set(Planner.plan(job, SHOP).drawnUp(), "slot1-slot", field, Plannable.inked(value));
    }

    /**
     * Sunk to its radius of 5. At κ from the axis of the ball a part of the edge cuts a chip fz sin φ sin κ and travels on
     * the radius 5 sin κ, so that the work of a tooth in a turn is kc1.1 fz^0.75 5² ∫ sin^0.75 φ dφ ∫ sin^1.75 κ dκ.
     *
     * <pre>
     * fz = 272 / (2720 · 2)                               = 0.05 mm
     * ∫ sin^0.75 φ dφ, 0 to π,   = √π Γ(0.875) / Γ(1.375)     = 2.173
     * ∫ sin^1.75 κ dκ, 0 to π/2, = √π / 2 Γ(1.375) / Γ(1.875) = 0.826
     * work   800 · 0.05^0.75 · 25 · 2.173 · 0.826         = 3796 N·mm
     * power  3796 · 2 · 2720 / 60                         = 344 W
     * torque 3796 · 2 / 2π                                = 1.208 N·m
     * </pre>
     */
    @Test
    void a_ball_nose_sunk_to_its_radius_comes_out_as_by_hand() {
        OperationCut ball = groove("5 mm");
        assertThat(ball.feedPerEdge().inside()).isCloseTo(0.05, within(1e-6));
        assertThat(ball.power().inside()).isCloseTo(344, withinPercentage(0.5));
        assertThat(newtonMetres(ball)).isCloseTo(1.208, withinPercentage(0.5));
    }

    /**
     * Sunk 2 mm it is 2 √(2 · 8) = 8 mm across, and κ ends at acos(1 - 2 / 5) = 0.9273. By Simpson's rule over four parts
     * of 0.2318, whose sines are 0, 0.2298, 0.4472, 0.6408 and 0.8:
     *
     * <pre>
     * ∫ sin^1.75 κ dκ = 0.2318 / 3 · (4 · 0.0762 + 2 · 0.2446 + 4 · 0.4589 + 0.6767) = 0.2555
     * work   800 · 0.05^0.75 · 25 · 2.173 · 0.2555        = 1174 N·mm
     * power  1174 · 2 · 2720 / 60                         = 106.4 W
     * </pre>
     */
    @Test
    void a_ball_nose_in_a_shallow_groove_cuts_with_what_of_it_is_sunk() {
        OperationCut ball = groove("2 mm");
        assertThat(requireNonNull(ball.milling()).cut().cutter().diameter()).isCloseTo(8, within(1e-9));
        assertThat(ball.power().inside()).isCloseTo(106.4, withinPercentage(1));
        assertThat(newtonMetres(ball)).isCloseTo(1174 * 2 / (2 * Math.PI) / 1000, withinPercentage(1));
    }
}
