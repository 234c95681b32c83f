package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import setwright.location.layout.SidePins;
import setwright.location.layout.SurfaceGrade;
import setwright.rigidity.Plank;
import setwright.rigidity.Squeezed;

/** Straps, slots, wedges, vees and what clamping bends, against examples from outside. */
class ClampFormsTest {
    private static Example example(String id) {
        return Example.of("closed-forms.csv", id);
    }

    @Test
    void a_strap_leans_and_bends_as_in_the_examples() {
        Example lean = example("SC-TILT-1");
        lean.holdsFor(Math.toDegrees(StrapStress.lean(lean.input("heel_height_minus_work"), lean.input("span_mm"))));
        Example bends = example("SC-STRAP-BEND");
        bends.holdsFor(StrapStress.bending(
                1000 * bends.input("F_work_kN"),
                bends.input("toe_to_bolt"),
                bends.input("width"),
                bends.input("slot"),
                bends.input("thick")));
    }

    @Test
    void the_lips_of_a_slot_are_sheared_as_in_the_example() {
        Example shear = example("TS-LIP-SHEAR");
        shear.holdsFor(SlotForms.shear(1000 * shear.input("F_kN"), shear.input("nut_len"), shear.input("lip_t")));
    }

    @Test
    void a_board_clamp_presses_as_hard_as_the_textbook_says() {
        Example clamp = example("VS-HIBBELER-CLAMP");
        Screw screw = new Screw(2 * clamp.input("r_mean_mm"), clamp.input("lead_mm"), clamp.input("mu"), 0);
        clamp.holdsFor(ScrewForms.force(1000 * clamp.input("M_Nm"), screw, 0, 0) / 1000);
    }

    @Test
    void a_wedge_that_lifts_a_block_beside_a_wall_is_driven_as_hard_as_the_textbook_says() {
        Example.of("closed-forms.csv", "ST-WEDGE").holdsFor(WedgeForms.drive(400, Math.toRadians(10), 0.25));
        assertThat(WedgeForms.holdsItself(Math.toRadians(10), 0.25)).isTrue();
        assertThat(WedgeForms.holdsItself(Math.toRadians(29), 0.25)).isFalse();
    }

    @Test
    void a_toggle_bears_less_at_a_longer_reach() {
        example("FX-TOGGLE-HC").holdsFor(StrapStress.AT_REACH.kernel().applyAsDouble(new double[] {4450, 49.5, 80.5}));
    }

    @TestFactory
    Stream<DynamicTest> a_round_lies_in_vee_mouth_and_slot_as_the_examples_say() {
        return Example.startingWith("closed-forms.csv", "VB-")
                .map(e -> DynamicTest.dynamicTest(e.id(), () -> e.holdsFor(round(e))));
    }

    private static double round(Example e) {
        String what = e.id().substring(3);
        if (what.startsWith("TSLOT-ANGLE")) {
            return Math.toDegrees(RoundForms.betweenNormals(e.input("w"), e.input("D")));
        }
        if (what.startsWith("TSLOT-SINK")) {
            return e.input("D") / 2 - RoundForms.overSlot(e.input("D"), e.input("w"));
        }
        if (what.startsWith("TSLOT")) {
            return RoundForms.overSlot(e.input("D"), e.input("w"));
        }
        double included = Math.toRadians(e.input("included"));
        if (what.equals("DIA-ERROR")) {
            return RoundForms.overVertex(50 + e.input("dD"), included) - RoundForms.overVertex(50, included);
        }
        if (what.equals("MOUTH")) {
            return RoundForms.overMouth(e.input("D"), included, e.input("V width at top"));
        }
        double centre = RoundForms.overVertex(e.input("D"), included);
        return what.startsWith("TOP") ? centre + e.input("D") / 2 : centre;
    }

    @Test
    void a_part_gives_to_a_squeeze_and_to_a_strap_as_in_the_examples() {
        Example squeezed = example("DI-COMPRESS");
        squeezed.holdsFor(
                1000 * Squeezed.shorter(squeezed.input("F"), squeezed.input("L"), 20 * 100, squeezed.input("E")));
        Example bowed = example("DI-BEND");
        bowed.holdsFor(1000
                * Squeezed.betweenSupports(
                        bowed.input("F"),
                        bowed.input("L"),
                        bowed.input("E"),
                        new Plank(bowed.input("b"), bowed.input("t"))));
    }

    @Test
    void a_part_turns_less_the_farther_apart_its_side_pins_are() {
        example("LO-YAW").holdsFor(1000 * SidePins.turn(0.01, 80));
        example("LO-YAW-SPREAD").holdsFor(1000 * SidePins.turn(0.01, 20));
    }

    @Test
    void a_plate_of_a_grade_is_as_flat_as_the_standard_says() {
        example("DI-DIN876-I-300").holdsFor(1000 * SurfaceGrade.GRADE_I.flatness(300));
        assertThat(1000 * SurfaceGrade.GRADE_0.flatness(1000)).isEqualTo(8);
        assertThat(1000 * SurfaceGrade.GRADE_II.flatness(300)).isEqualTo(26);
        assertThat(1000 * SurfaceGrade.GRADE_III.flatness(1000)).isEqualTo(80);
    }
}
