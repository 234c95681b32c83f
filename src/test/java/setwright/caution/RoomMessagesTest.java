package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.quantity.Unit;

/** Figures of the room checks, worked by hand from the sizes of the small shop. */
class RoomMessagesTest {
    private static Caution only(Bench bench, String slug) {
        return bench.found(slug).get(0);
    }

    /** A tap of four threads of lead comes out by 4 x 1.25 and one pitch more: 6.25. */
    @Test
    void a_tap_comes_down_into_the_bed_by_its_lead_and_a_pitch() {
        Caution touching = only(RoomCases.onTheBed(), "drill-meets-vise-bed");
        Caution near = only(RoomCases.parallelsHigh(6.6), "drill-meets-vise-bed");

        assertThat(touching.severity()).isEqualTo(Severity.STOP);
        assertThat(near.severity()).isEqualTo(Severity.CAUTION);
        assertThat(near.figure().value()).isCloseTo(6.6 - 5 * 1.25, within(1e-9));
        assertThat(near.message()).contains("vise bed", "higher parallels");
    }

    /** Parallels of 25.3 and a finished height of 19 against jaws of 44. */
    @Test
    void a_face_mill_passes_over_the_jaws_by_what_stands_out_of_them() {
        Caution near = only(RoomCases.lowBlock(25.3), "cutter-meets-jaw");

        assertThat(near.severity()).isEqualTo(Severity.CAUTION);
        assertThat(near.figure().value()).isCloseTo(25.3 + 19 - 44, within(1e-9));
        assertThat(only(RoomCases.lowBlock(24), "cutter-meets-jaw").severity()).isEqualTo(Severity.STOP);
    }

    /** The drill ends 5 / tan 59 and 1 below 29 of steel (30 of blank, +1, on the parallels); the nose is its stick-out above. */
    @Test
    void the_nose_comes_down_on_the_part_by_what_the_drill_lacks() {
        double needed = 29 + 5 / Math.tan(Math.toRadians(59)) + 1;

        assertThat(only(RoomCases.drillInCollet(32), "nose-meets-work").figure().value())
                .isCloseTo(32 - needed, within(1e-6));
    }

    @Test
    void a_drill_longer_in_the_hole_than_its_flutes_is_a_caution_a_cutter_a_stop() {
        Bench stub = Cases.block().ink("h2-drill", OperationField.CUTTER, SmallCutters.STUB_6_8);

        assertThat(only(stub, "shank-rubs").severity()).isEqualTo(Severity.CAUTION);
        assertThat(only(RoomCases.facedInOnePass("76.5"), "shank-rubs").severity())
                .isEqualTo(Severity.STOP);
    }

    /** Crossing 10 over the face at 123.7 with 217 of drill and chuck: 350.7; only the 10 are asked and not needed. */
    @Test
    void ten_millimetres_over_the_work_are_asked_and_none_is_needed() {
        assertThat(only(Cases.lowHead(350), "knee-runs-out").severity()).isEqualTo(Severity.CAUTION);
        assertThat(only(Cases.lowHead(350), "knee-runs-out").figure().value()).isCloseTo(350.7, within(1e-9));
        assertThat(Cases.lowHead(340).found("knee-runs-out").get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(Cases.lowHead(350.7).found("knee-runs-out")).isEmpty();
    }

    @Test
    void a_knee_height_that_the_machine_has_not_got_is_not_run() {
        Caution inked = only(Cases.block().mm("f1-face", OperationField.KNEE_HEIGHT, 480), "knee-runs-out");

        assertThat(inked.severity()).isEqualTo(Severity.STOP);
        assertThat(inked.figure()).isEqualTo(Figure.atMost(18.5 * 25.4, 480, Unit.MM));
    }

    /** Half of 750, 25 off the middle, half the cutter and 2 of run-off: 433.5 to one side. */
    @Test
    void travel_is_counted_from_the_middle_to_both_sides() {
        Caution caution = only(RoomCases.bar("750", 25), "travel-too-short");

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.figure().value()).isCloseTo(2 * (375 + 25 + 31.5 + 2), within(1e-9));
        assertThat(caution.figure().limit()).isCloseTo(34 * 25.4, within(1e-9));
    }

    @Test
    void the_part_is_offered_where_its_path_lies_about_the_middle_of_the_table() {
        Bench aside = RoomCases.bar("750", 25);
        Caution caution = only(aside, "travel-too-short");

        assertThat(aside.remedies(caution)).isNotEmpty();
        assertThat(new setwright.caution.check.TravelTooShort().proposals(aside.plan(), caution))
                .extracting(Proposal::text)
                .contains("Set the part 25 mm further to the left (now 25.0 mm, inked).");
    }

    /** 1000 and the cutter of 63 with 2 mm at both ends is more than 34 in wherever the bar lies. */
    @Test
    void a_path_longer_than_the_slide_is_cut_in_two_places_with_what_finding_again_is_out() {
        Caution caution = only(RoomCases.bar("1000", 0), "travel-too-short");

        assertThat(caution.message()).contains("slide the part along", "0.025 mm out");
    }

    /** Half of 1200 and 60 beside the middle against half of 49 in. */
    @Test
    void what_hangs_over_the_end_of_the_table_is_weighed() {
        Caution caution = only(RoomCases.bar("1200", 60), "hangs-off-the-table");
        double beyond = 660 - 49 * 25.4 / 2;
        double mass = beyond * 52 * 40 * 2700e-9;

        assertThat(caution.figure().value()).isCloseTo(660, within(1e-9));
        assertThat(caution.message()).contains(String.format(java.util.Locale.ROOT, "%.1f kg", mass));
    }

    @Test
    void the_largest_blank_has_to_go_between_the_jaws_as_they_are_screwed_on() {
        Caution caution = only(RoomCases.wide("149.5"), "opening-too-small");

        assertThat(caution.figure()).isEqualTo(Figure.atMost(150, 150.5, Unit.MM));
        assertThat(RoomCases.wide("149.5")
                        .ink(ViseField.SEAT, setwright.job.ViseHolding.JawSeat.OUTBOARD)
                        .found("opening-too-small"))
                .isEmpty();
    }
}
