package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static setwright.plan.HoldingJobs.setUp;
import static setwright.plan.HoldingJobs.size;
import static setwright.plan.HoldingShop.angle;
import static setwright.plan.HoldingShop.length;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.geometry.Side;
import setwright.job.DeviceHolding;
import setwright.job.GotBy;
import setwright.job.Keyseat;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Plannable;
import setwright.job.Size;
import setwright.plan.cut.LooseLimit;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.plan.cut.WorkGives;
import setwright.quantity.Band;
import setwright.shop.Shop;

/** What only an estimate is known of stands beside the limits and never among them. */
class LooseLimitsTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> jobs() throws java.io.IOException {
        return PlannedPassesTest.jobs();
    }

    private static List<LooseLimit> loose(OperationCut cut, LimitName name) {
        return cut.looseLimits().stream().filter(one -> one.name() == name).toList();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void an_estimate_of_chatter_is_told_as_a_band_or_as_not_predictable_and_governs_nothing(Path file) {
        for (OperationCut cut :
                Planner.plan(BearingBlock.job(file, SHOP), SHOP).cut().operations()) {
            Stability stability = cut.stability();
            boolean estimated = stability != null && stability.basis() == Stability.Basis.ESTIMATED;
            List<LooseLimit> chatter = loose(cut, LimitName.CHATTER);
            assertThat(chatter).as(cut.operation()).hasSize(estimated ? 1 : 0);
            if (estimated) {
                assertThat(chatter.get(0).used() != null)
                        .isEqualTo(requireNonNull(stability).predictable());
                assertThat(cut.limits()).extracting(Limit::name).doesNotContain(LimitName.CHATTER);
            }
        }
    }

    /** A keyseat 8 wide and 4 deep, within 0.1, in a bar of 30 by 400 on V-blocks 60 long. */
    private static OperationCut keyseat(String v) {
        Keyseat seat = new Keyseat(
                "key1",
                "",
                Side.FRONT,
                size("30 mm"),
                size("8 mm"),
                new Size(length("4 mm"), length("4 mm"), length("4.1 mm")),
                Keyseat.From.CROWN,
                size("30 mm"),
                new Placed(Pattern.Datum.CENTRE, length("0 mm"), length(v), angle("90 deg")),
                null,
                GotBy.TOOL);
        DeviceHolding vees = new DeviceHolding(
                DeviceHolding.On.V_BLOCKS,
                Plannable.inked("vees"),
                Plannable.pencilled(),
                Plannable.pencilled(),
                null,
                List.of(),
                List.of());
        return HoldingJobs.plan(HoldingJobs.bar("30 mm", "400 mm"), List.of(seat), List.of(setUp(Side.FRONT, 1, vees)))
                .cut()
                .operation("key1-keyseat")
                .orElseThrow();
    }

    /**
     * V-blocks under the quarters of 400 mm stand 200 apart, 200 - 60 = 140 mm free. A force F along the spindle midway:
     *
     * <pre>
     * δ = F · 140³ · 64 / (48 · π · E · 30⁴), which may be 0.05 mm
     * </pre>
     */
    @Test
    void a_shaft_on_v_blocks_gives_between_them_under_a_keyseat() {
        OperationCut cut = keyseat("0 mm");
        WorkGives gives = cut.work().get(0);
        Band used = requireNonNull(loose(cut, LimitName.WORK_SPRING).get(0).used());
        double force = requireNonNull(cut.milling()).turn().stream()
                .mapToDouble(point -> Math.abs(point.force().axial()))
                .max()
                .orElseThrow();
        double modulus = 206000;

        assertThat(gives.where()).isEqualTo(WorkGives.Where.SHAFT);
        assertThat(gives.span()).isCloseTo(140, within(1e-9));
        assertThat(gives.inside())
                .isCloseTo(
                        force * Math.pow(140, 3) * 64 / (48 * Math.PI * modulus * Math.pow(30, 4)),
                        withinPercentage(1));
        assertThat(used.expected()).isCloseTo(gives.inside() / 0.05, within(1e-6));
        assertThat(used.high()).isCloseTo(1.3 * used.expected(), within(1e-9));
    }

    @Test
    void a_keyseat_over_a_v_block_bends_no_shaft() {
        assertThat(keyseat("100 mm").work()).isEmpty();
    }
}
