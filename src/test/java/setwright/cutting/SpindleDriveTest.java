package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.plan.BearingBlock;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.shop.Machine;

/** What a drive has at the cutter, with cases worked on paper in the comments. */
class SpindleDriveTest {
    private static SpindleDrive drive(String machine) {
        return new SpindleDrive(BearingBlock.shop().row(machine, Machine.class).orElseThrow());
    }

    private static double rpm(double turns) {
        return Unit.RPM.toInside(turns);
    }

    /** 2 hp · 0.75 = 1.1186 kW at every step; M = 9550 · 1.1186 / 80 = 133.5 N·m in the slowest, 3.93 N·m in the fastest. */
    @Test
    void pulleys_and_gears_give_the_whole_power_at_every_step() {
        SpindleDrive knee = drive("knee-mill-r8-9x49");
        assertThat(knee.powerAt(rpm(80))).isCloseTo(1118.6, within(0.5));
        assertThat(knee.powerAt(rpm(2720))).isCloseTo(1118.6, within(0.5));
        assertThat(Unit.N_M.fromInside(knee.torqueAt(rpm(80)))).isCloseTo(133.5, within(0.2));
        assertThat(Unit.N_M.fromInside(knee.torqueAt(rpm(2720)))).isCloseTo(3.93, within(0.01));
        assertThat(knee.rangeAt(rpm(80)).orElseThrow().name()).isEqualTo("back gear");
    }

    /**
     * 0.5 kW · 0.75 = 0.375 kW; low belt to 1100 with the whole power from 550 on, high belt from 1250 on.
     *
     * <pre>
     * 275   0.375 · 275 / 550     = 0.1875 kW; M = 9550 · 0.375 / 550  = 6.51 N·m
     * 700   0.375 kW                         ; M = 9550 · 0.375 / 700  = 5.12 N·m
     * 1200  0.375 · 1200 / 1250   = 0.36 kW  ; M = 9550 · 0.375 / 1250 = 2.87 N·m
     * </pre>
     */
    @Test
    void a_variable_drive_has_its_torque_below_and_its_power_above_the_base_of_each_range() {
        SpindleDrive bench = drive("bench-mill-odd");
        assertThat(bench.powerAt(rpm(275))).isCloseTo(187.5, within(0.1));
        assertThat(bench.powerAt(rpm(700))).isCloseTo(375, within(0.1));
        assertThat(bench.powerAt(rpm(1200))).isCloseTo(360, within(0.1));
        assertThat(Unit.N_M.fromInside(bench.torqueAt(rpm(275)))).isCloseTo(6.51, within(0.01));
        assertThat(Unit.N_M.fromInside(bench.torqueAt(rpm(700)))).isCloseTo(5.12, within(0.01));
        assertThat(Unit.N_M.fromInside(bench.torqueAt(rpm(1200)))).isCloseTo(2.87, within(0.01));
    }

    @Test
    void the_working_names_the_range_whose_base_it_took() {
        var worked = drive("bench-mill-odd").powerAt(Given.of("spindle speed", rpm(275), Unit.RPM, "test"));
        assertThat(worked.inside()).isCloseTo(187.5, within(0.1));
        assertThat(worked.from()).extracting("origin").contains("shop/bench-mill-odd/ranges");
    }

    @Test
    void torque_times_speed_is_the_power_at_every_speed() {
        for (String machine : new String[] {"knee-mill-r8-9x49", "bench-mill-odd", "vertical-mill-30"}) {
            SpindleDrive drive = drive(machine);
            for (double turns = 80; turns <= 2500; turns *= 1.3) {
                assertThat(CuttingPower.power(drive.torqueAt(rpm(turns)), rpm(turns)))
                        .as(machine + " at " + turns)
                        .isCloseTo(drive.powerAt(rpm(turns)), within(1e-6));
            }
        }
    }
}
