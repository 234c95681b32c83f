package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.CsvRows;

class ReachChecksTest {
    private static final double NOTHING = 1e-12;

    static List<CsvRows.Row> checks() {
        return CsvRows.beside(ReachChecksTest.class, "reach-checks.csv");
    }

    /** Every kernel is linear in its lengths, so that an example in inches stays in inches. */
    @ParameterizedTest
    @MethodSource("checks")
    void worked_examples_come_out_as_their_sources_print_them(CsvRows.Row check) {
        double[] v = Arrays.stream(check.text("inputs").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double found = switch (check.text("what")) {
            case "blind tap drill depth" -> new BlindTap(v[0], v[1], v[2], v[3]).drillDepth();
            case "point length" -> ThroughDepth.pointLength(v[0], Math.toRadians(v[1]));
            case "depth with point" -> v[2] + ThroughDepth.pointLength(v[0], Math.toRadians(v[1]));
            case "bs 1936 clearance" -> BlindTap.bs1936Clearance(v[0], v[1]);
            case "saw reach" -> Travel.sawReach(v[0], v[1], v[2]);
            case "facing travel" -> Travel.facing(v[0], v[1], v[2]);
            case "daylight" -> QuillUse.daylight(v[0], v[1]);
            case "quill stroke" -> new QuillUse(v[0], v[1], v[2], v[3], v[4], v[5]).stroke();
            default -> throw new IllegalArgumentException(check.text("what"));
        };

        assertThat(found).isCloseTo(check.number("result"), within(check.number("tolerance")));
    }

    /** W39 with a quill of 5 in. */
    @Test
    void a_quill_of_five_inches_has_ten_millimetres_left() {
        assertThat(new QuillUse(185, 108, 10, 25, 3, 2).spare(127)).isCloseTo(10, within(NOTHING));
    }

    /** A 6.8 drill through 38 mm: 38 + 0.3 x 6.8 + 1, by the rule of thumb for 118 degrees. */
    @Test
    void a_drill_comes_out_by_its_point_and_one_millimetre() {
        var through = ThroughDepth.drill(38, 6.8, Math.toRadians(118));

        assertThat(through.travel()).isCloseTo(38 + 0.3 * 6.8 + 1, within(0.01));
        assertThat(through.spare(5)).isCloseTo(5 - 3.04, within(0.01));
        assertThat(through.spare(3)).isNegative();
    }

    @Test
    void a_reamer_and_a_tap_come_out_by_bevel_or_lead_and_their_over_run() {
        assertThat(ThroughDepth.reamer(38, 1.5).travel()).isEqualTo(38 + 1.5 + 2);
        assertThat(ThroughDepth.tap(38, 4, 1.25).travel()).isEqualTo(38 + 4 * 1.25 + 1.25);
    }

    @Test
    void a_tap_bottoms_in_a_hole_that_is_too_shallow() {
        var tap = new BlindTap(16, 4, 1.25, 8);

        assertThat(tap.drillDepth()).isEqualTo(16 + 5 * 1.25 + 8);
        assertThat(tap.spare(30)).isNegative();
        assertThat(tap.spare(31)).isPositive();
    }
}
