package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.GotBy;
import setwright.job.OperationField;
import setwright.job.Size;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;

class GripChecksTest {
    /** Nobody wrote down how hard the bolts are done up. */
    @Test
    void the_bolts_of_a_device_never_stop_a_plan_by_themselves() {
        Bench bench = GripCases.heavyFacing(4000);

        assertThat(bench.found("device-slides-on-table"))
                .extracting(Caution::severity)
                .containsExactly(Severity.CAUTION);
    }

    @Test
    void a_tall_part_that_tips_in_a_shallow_grip_is_one_caution() {
        Bench tips = Cases.tall(120).in(SmallShop.shop().with(List.of(SmallShop.viseWithJaw("41 mm"))));

        assertThat(tips.plan().part().setUps().get(0).heights().gripDepth()).isLessThan(3);
        assertThat(tips.found("tips-in-grip")).hasSize(1);
        assertThat(tips.found("grip-too-shallow")).isEmpty();
    }

    @Test
    void the_grip_depth_is_jaw_top_less_underside_of_the_part() {
        Caution shallow = GripCases.shallow("41 mm").found("grip-too-shallow").get(0);

        assertThat(shallow.figure().value()).isCloseTo(41 - 38.1, within(1e-9));
    }

    /** Over the middle of the jaws by 41 - 40.5 mm; a long part at the end of the jaws still reaches over it. */
    @Test
    void a_part_that_reaches_over_the_middle_may_sit_at_one_end() {
        assertThat(GripCases.offset(-42).found("one-end-of-jaws")).hasSize(1);
        assertThat(GripCases.offset(-40.5).found("one-end-of-jaws")).isEmpty();
    }

    /** 25 kN half a millimetre and a half off the middle: M L² 12 / (8 E w h³), by hand. */
    @Test
    void the_bow_between_the_jaws_is_that_of_a_beam_bent_at_its_ends() {
        Caution bow = GripCases.thinPlate(GripAsked.HARD)
                .found("springs-when-released")
                .get(0);
        double moment = 25000 * (8 - 5.9) / 2;

        assertThat(bow.figure().value())
                .isCloseTo(12 * moment * 100 * 100 / (8 * 200000.0 * 100 * 512), withinPercentage(0.1));
    }

    @Test
    void a_general_size_is_not_sprung_out_of_anything() {
        Bench general = GripCases.thinPlate(GripAsked.HARD)
                .with(job -> job.withPlan(job.plan()
                        .withFeatures(List.of(new Face(
                                "f1", "face to 8", Side.TOP, Size.of(SmallJobs.mm("8 mm")), null, GotBy.MEASURED)))));

        assertThat(general.findings().margins()).extracting(Margin::of).doesNotContain("springs-when-released");
    }

    @Test
    void a_sawn_face_has_no_skin() {
        Bench sawn = Bench.of(SmallJobs.withFaces(SmallJobs.bearingBlock(), Map.of(Side.TOP, FaceState.SAWN)))
                .mm("f1-face", OperationField.DEPTH, 0.5);

        assertThat(sawn.found("cut-skims-the-skin")).isEmpty();
    }

    @Test
    void a_vise_done_up_softer_is_offered_against_a_bow() {
        Bench bench = GripCases.thinPlate(GripAsked.HARD);

        assertThat(bench.remedies(bench.found("springs-when-released").get(0)))
                .extracting(Remedy::text)
                .anyMatch(text -> text.startsWith("Close the vise snug"));
        assertThat(bench.ink(ViseField.GRIP, GripAsked.SNUG).found("springs-when-released"))
                .isEmpty();
    }
}
