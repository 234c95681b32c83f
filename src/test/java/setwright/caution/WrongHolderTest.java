package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.job.Operation.Method;
import setwright.job.OperationField;

class WrongHolderTest {
    private static final String SLUG = "wrong-holder";

    private static Caution of(Bench bench) {
        return bench.found(SLUG).get(0);
    }

    @Test
    void an_end_mill_in_a_drill_chuck_is_not_run() {
        Caution caution = of(Cases.facing(SmallCutters.CARBIDE_END_MILL, SmallHolders.KEYED));

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.figure()).isNull();
        assertThat(caution.message()).contains("a drill chuck has no hold on an end mill");
    }

    @Test
    void a_shank_above_the_capacity_of_the_chuck_is_not_run() {
        Caution caution = of(Cases.facing(SmallCutters.END_MILL, SmallHolders.KEYED));

        assertThat(caution.message()).contains("1 mm to 13 mm", "20 mm");
    }

    @Test
    void another_taper_than_the_spindle_has_is_not_run() {
        Caution caution = of(Cases.facing(SmallCutters.END_MILL, SmallHolders.STEEP));

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.message()).contains("its taper does not fit the spindle");
    }

    @Test
    void a_face_mill_belongs_on_its_arbor() {
        assertThat(of(Cases.facing(SmallCutters.FACE_MILL, SmallHolders.COLLET_CHUCK))
                        .severity())
                .isEqualTo(Severity.STOP);
    }

    @Test
    void a_plain_shank_under_a_set_screw_is_a_caution_and_a_flatted_one_is_right() {
        Caution plain = of(Cases.facing(SmallCutters.PLAIN_END_MILL, SmallHolders.END_MILL_HOLDER));

        assertThat(plain.severity()).isEqualTo(Severity.CAUTION);
        assertThat(Cases.facing(SmallCutters.END_MILL, SmallHolders.END_MILL_HOLDER)
                        .found(SLUG))
                .isEmpty();
    }

    @Test
    void a_tap_run_backwards_in_a_keyless_chuck_is_a_caution_by_hand_it_is_not() {
        Bench keyless = Cases.block().ink("h2-tap", OperationField.HOLDER, SmallHolders.KEYLESS);

        assertThat(of(keyless.ink("h2-tap", OperationField.METHOD, Method.TAP_UNDER_POWER))
                        .severity())
                .isEqualTo(Severity.CAUTION);
        assertThat(keyless.ink("h2-tap", OperationField.METHOD, Method.TAP_BY_HAND_GUIDED)
                        .found(SLUG))
                .isEmpty();
    }

    @Test
    void drills_reamers_taps_and_spot_drills_are_right_in_a_drill_chuck() {
        Bench allInChuck = Cases.block();
        for (String operation : new String[] {"s1-spot", "h1-drill", "h2-drill", "h1-ream", "h2-tap"}) {
            allInChuck = allInChuck.ink(operation, OperationField.HOLDER, SmallHolders.KEYED);
        }

        assertThat(allInChuck.found(SLUG)).isEmpty();
    }

    @Test
    void another_wrong_pairing_is_another_thing_to_accept() {
        Caution chuck = of(Cases.facing(SmallCutters.END_MILL, SmallHolders.KEYED));
        Caution steep = of(Cases.facing(SmallCutters.END_MILL, SmallHolders.STEEP));

        assertThat(chuck.identity()).isNotEqualTo(steep.identity());
    }
}
