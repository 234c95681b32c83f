package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;

class DrillingTest {
    /** Printed factors that the closed forms do not meet; the neighbours of each fit. */
    private static final List<String> ODD_IN_PRINT = List.of("FT 8.8", "A 0.15", "J 0.25");

    private static final double POINT_118 = Math.toRadians(118);

    static List<CheckRow> factors() {
        return CheckRow.of(DrillingTest.class, "drill-factors.csv");
    }

    @ParameterizedTest
    @MethodSource("factors")
    void the_closed_forms_are_the_factors_of_the_handbook(CheckRow row) {
        double at = row.number("at");
        double closed = switch (row.cell("factor")) {
            case "Ff" -> Drilling.feedFactor(at);
            case "FT" -> Drilling.thrustFactor(at);
            case "FM" -> Drilling.torqueFactor(at);
            case "A" -> ChiselFactors.of(at, 0).torque();
            case "B" -> ChiselFactors.of(at, 0).lips();
            default -> ChiselFactors.of(at, 0).web();
        };
        double off = Math.abs(closed - row.number("printed"));
        double allowed = Math.max(0.01 * closed, 1.001 * halfOfLastDigit(row.cell("printed")));

        boolean odd = ODD_IN_PRINT.contains(row.cell("factor") + " " + row.cell("at"));
        assertThat(off <= allowed).as("%s off %s", row, off).isNotEqualTo(odd);
    }

    private static double halfOfLastDigit(String printed) {
        int point = printed.indexOf('.');
        return 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - printed.length());
    }

    @Test
    void a_pilot_takes_the_load_off_little_by_little_until_the_chisel_is_gone() {
        DrillLoad before = Drilling.load(DrillCut.plain(20, 0.2), 24000);
        for (double pilot = 0.2; pilot < 20; pilot += 0.2) {
            DrillLoad load = Drilling.load(DrillCut.plain(20, 0.2).withPilot(pilot), 24000);
            assertThat(load.thrust()).isLessThan(before.thrust()).isGreaterThan(before.thrust() * 0.6 - 100);
            assertThat(load.torque()).isLessThan(before.torque());
            before = load;
        }
        assertThat(before.torque())
                .isLessThan(0.05 * Drilling.load(DrillCut.plain(20, 0.2), 24000).torque());
    }

    @Test
    void a_pilot_as_wide_as_the_web_takes_more_than_half_of_the_thrust() {
        DrillCut solid = DrillCut.plain(12, 0.2);

        double piloted = Drilling.load(solid.withPilot(0.18 * 12), 24000).thrust();

        assertThat(piloted).isLessThan(0.5 * Drilling.load(solid, 24000).thrust());
    }

    @Test
    void a_split_point_pushes_less_and_a_dull_one_more() {
        DrillCut plain = DrillCut.plain(10, 0.2);
        double thrust = Drilling.load(plain, 24000).thrust();

        assertThat(Drilling.load(plain.withWebRatio(ChiselFactors.SPLIT_POINT), 24000)
                        .thrust())
                .isLessThan(0.8 * thrust);
        assertThat(Drilling.load(plain.withWear(1.3), 24000).thrust()).isCloseTo(1.3 * thrust, withinPercentage(1e-9));
    }

    @Test
    void the_opinions_on_a_ten_millimetre_drill_in_steel_stand_as_far_apart_as_the_notes_of_the_sources_say() {
        // Computed from each source's formula for D 10, f 0.2, steel of 200 to 230 HB.
        DrillCut drill = DrillCut.plain(10, 0.2);

        assertThat(Drilling.load(drill, 24000).torque()).isCloseTo(11300, withinPercentage(1));
        assertThat(Drilling.torqueByKc(drill, new Kienzle(1500, 0.22), POINT_118))
                .isCloseTo(6400, withinPercentage(1));
        assertThat(Drilling.specificForce(new Kienzle(1500, 0.22), 0.2, POINT_118))
                .isCloseTo(2574, withinPercentage(0.1));
        assertThat(Drilling.makerTorque(2.10, 10, 0.2)).isCloseTo(8400, withinPercentage(1));
    }

    @Test
    void the_handbook_form_is_the_inch_form_in_other_units() {
        // T = 2 Kd Ff FT B W + Kd D² J W in pounds, M = Kd Ff FM A W in pound-inches, with inches throughout.
        Rounds.each(31, (random, round) -> {
            double inches = random.nextDouble(0.06, 2);
            double feed = random.nextDouble(0.001, 0.05);
            var chisel = ChiselFactors.of(random.nextDouble(0.03, 0.4), 0);
            double lips = 2 * 20000 * Math.pow(feed, 0.8) * Math.pow(inches, 0.8) * chisel.lips();
            double thrust = lips + 20000 * inches * inches * chisel.web();
            double torque = 20000 * Math.pow(feed, 0.8) * Math.pow(inches, 1.8) * chisel.torque();
            var drill = new Drilling.Drill(25.4 * inches, 25.4 * feed, 1);

            assertThat(Drilling.thrust(drill, chisel, 20000) / 4.4482).isCloseTo(thrust, withinPercentage(1.5));
            assertThat(Drilling.torque(drill, chisel.torque(), 20000) / 112.985).isCloseTo(torque, withinPercentage(1));
        });
    }

    @Test
    void by_kc_the_torque_does_the_work_that_the_ring_asks_for() {
        Rounds.each(32, (random, round) -> {
            double diameter = random.nextDouble(2, 30);
            var drill = DrillCut.plain(diameter, random.nextDouble(0.02, 0.4))
                    .withPilot(random.nextDouble(0, 0.95) * diameter);
            var material = MillingForceTest.anyMaterial(random);
            double speed = random.nextDouble(5, 300);
            double area = Math.PI / 4 * (diameter * diameter - drill.pilot() * drill.pilot());
            double rate = area * SpeedAndFeed.tableFeed(speed, 1, drill.feed());
            double kc = Drilling.specificForce(material, drill.feed(), POINT_118);

            double power = CuttingPower.power(Drilling.torqueByKc(drill, material, POINT_118), speed);

            assertThat(power).isCloseTo(CuttingPower.powerOfRemoval(rate, kc), withinPercentage(1e-9));
        });
    }

    @Test
    void a_pilot_wider_than_its_drill_is_refused() {
        assertThatThrownBy(() -> DrillCut.plain(8, 0.1).withPilot(8))
                .hasMessage("A pilot is smaller than its drill of 8.0 mm, not 8.0 mm.");
    }
}
