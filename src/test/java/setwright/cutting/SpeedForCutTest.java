package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.Given;
import setwright.quantity.Reading;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.IsoGroup;
import setwright.shop.ToolMaterial;

/** The table's speed and feed turned into those of one cut, with cases worked on paper in the comments. */
class SpeedForCutTest {
    private static final Reading READ = new Reading(UnitSystem.METRIC);

    /** 25 m/min for a life of 60 min; 0.02 mm a tooth at 6 mm, 0.05 mm at 12 mm. */
    private static CuttingSpeed row(Cutter.Form form, ToolMaterial tool, @Nullable String exponent) {
        return new CuttingSpeed(
                "row",
                "Row",
                "steel",
                form,
                tool,
                READ.cuttingSpeed("25 m/min"),
                READ.cuttingSpeed("35 m/min"),
                List.of(
                        new CuttingSpeed.FeedAt(READ.length("6 mm"), READ.length("0.02 mm")),
                        new CuttingSpeed.FeedAt(READ.length("12 mm"), READ.length("0.05 mm"))),
                exponent == null ? null : READ.ratio(exponent),
                "test");
    }

    private static double speed(CuttingSpeed row, IsoGroup work, Cooling cooling, boolean skin, double minutes) {
        Given life = Given.of("life", 60 * minutes, Unit.MINUTE, "test");
        return Unit.M_PER_MIN.fromInside(
                SpeedForCut.of(row, work, new SpeedForCut.Conditions(SpeedForCut.KIND.of("", 1), cooling, skin, life))
                        .inside());
    }

    /**
     * <pre>
     * 60 min                          25 m/min as the table says
     * 240 min  25 · (60 / 240)^0.125  = 25 · 0.8409 = 21.02
     * carbide  25 · (60 / 240)^0.25   = 25 · 0.7071 = 17.68
     * own 0.2  25 · (60 / 15)^0.2     = 25 · 1.3195 = 32.99
     * </pre>
     */
    @Test
    void a_longer_life_asks_for_less_speed_by_the_exponent_of_the_edge() {
        CuttingSpeed hss = row(Cutter.Form.END_MILL, ToolMaterial.HSS, null);
        CuttingSpeed carbide = row(Cutter.Form.END_MILL, ToolMaterial.CARBIDE, null);
        CuttingSpeed own = row(Cutter.Form.END_MILL, ToolMaterial.HSS, "0.2");
        assertThat(speed(hss, IsoGroup.P, Cooling.BRUSHED, false, 60)).isCloseTo(25, within(1e-9));
        assertThat(speed(hss, IsoGroup.P, Cooling.BRUSHED, false, 240)).isCloseTo(21.02, within(0.01));
        assertThat(speed(carbide, IsoGroup.P, Cooling.DRY, false, 240)).isCloseTo(17.68, within(0.01));
        assertThat(speed(own, IsoGroup.P, Cooling.BRUSHED, false, 15)).isCloseTo(32.99, within(0.01));
    }

    /** P.C. Sharma, A Textbook of Production Engineering, Ex 14.1 p.563: 18 m/min for 180 min, n = 0.125; at 24 m/min 18 min. */
    @Test
    void the_life_at_another_speed_is_that_of_the_textbook() {
        double ofTable = 18 * Math.pow(180.0 / 60, 0.125);
        assertThat(SpeedForCut.life(ofTable, 1, 24, 0.125) / 60).isCloseTo(18, within(0.27));
    }

    /**
     * <pre>
     * dry, HSS in steel   25 · 0.8        = 20
     * flood               25 · 1.2        = 30
     * under the skin      25 · 0.65       = 16.25
     * </pre>
     */
    @Test
    void coolant_and_skin_change_the_speed_of_high_speed_steel() {
        CuttingSpeed hss = row(Cutter.Form.END_MILL, ToolMaterial.HSS, null);
        assertThat(speed(hss, IsoGroup.P, Cooling.DRY, false, 60)).isCloseTo(20, within(1e-9));
        assertThat(speed(hss, IsoGroup.P, Cooling.FLOOD, false, 60)).isCloseTo(30, within(1e-9));
        assertThat(speed(hss, IsoGroup.P, Cooling.BRUSHED, true, 60)).isCloseTo(16.25, within(1e-9));
    }

    @Test
    void cast_iron_and_carbide_run_dry_as_fast_as_wet() {
        CuttingSpeed hss = row(Cutter.Form.END_MILL, ToolMaterial.HSS, null);
        CuttingSpeed carbide = row(Cutter.Form.END_MILL, ToolMaterial.CARBIDE, null);
        for (Cooling cooling : Cooling.values()) {
            assertThat(speed(hss, IsoGroup.K, cooling, false, 60)).isCloseTo(25, within(1e-9));
            assertThat(speed(carbide, IsoGroup.P, cooling, false, 60)).isCloseTo(25, within(1e-9));
        }
    }

    @Test
    void speed_and_life_lead_back_to_each_other() {
        Rounds.each(71, (random, round) -> {
            double table = 5 + 300 * random.nextDouble();
            double factor = 0.4 + random.nextDouble();
            double life = 300 + 30000 * random.nextDouble();
            double exponent = 0.1 + 0.3 * random.nextDouble();
            double speed = SpeedForCut.speed(table, factor, life, exponent);
            assertThat(SpeedForCut.life(table, factor, speed, exponent)).isCloseTo(life, within(1e-6 * life));
        });
    }

    private static double feed(Cutter.Form form, double diameter, double width, double stickOut) {
        return FeedForCut.of(
                        row(form, ToolMaterial.HSS, null), new FeedForCut.Conditions(form, diameter, width, stickOut))
                .inside();
    }

    /**
     * End mill of 12 at 0.05 mm.
     *
     * <pre>
     * slot                                                        0.05
     * side cut 3:    3 / 12 = 0.25; 2 √(0.25 · 0.75) = 0.8660     0.05774
     * side cut 0.25: 2 √(0.02083 · 0.97917) = 0.2857, 3.5 times: at most 1.5     0.075
     * </pre>
     */
    @Test
    void a_narrow_side_cut_is_fed_for_the_full_chip_up_to_half_as_much_again() {
        assertThat(feed(Cutter.Form.END_MILL, 12, 12, 36)).isCloseTo(0.05, within(1e-12));
        assertThat(feed(Cutter.Form.END_MILL, 12, 3, 36)).isCloseTo(0.05774, within(1e-5));
        assertThat(feed(Cutter.Form.END_MILL, 12, 0.25, 36)).isCloseTo(0.075, within(1e-12));
    }

    /**
     * <pre>
     * 3 mm, table from 6 mm     0.02 · 3 / 6     = 0.01
     * 12 out 72 mm              0.05 · 48 / 72   = 0.03333
     * fly cutter                0.05 · 0.75      = 0.0375
     * </pre>
     */
    @Test
    void small_tools_long_tools_and_single_edges_are_fed_less() {
        assertThat(feed(Cutter.Form.END_MILL, 3, 3, 10)).isCloseTo(0.01, within(1e-12));
        assertThat(feed(Cutter.Form.END_MILL, 12, 12, 72)).isCloseTo(0.03333, within(1e-5));
        assertThat(feed(Cutter.Form.FLY_CUTTER, 12, 12, 72)).isCloseTo(0.0375, within(1e-12));
    }
}
