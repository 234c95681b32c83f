package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.quantity.Given;
import setwright.quantity.Unit;

class FrictionBalanceTest {
    private static final Vector DOWN = Vector.UP.times(-1);

    /** Two faces pressed together with 1000 N, friction 0.2, around the origin. */
    private static final List<Contact> PINCH = List.of(
            Contact.reacting("front", new Vector(0, -10, 0), Vector.AWAY, 0.2).pressing(1000),
            Contact.reacting("back", new Vector(0, 10, 0), Vector.AWAY.times(-1), 0.2));

    private static Load at(double x, double y, double z, double fx, double fy, double fz) {
        return Load.force("cut", new Vector(x, y, z), new Vector(fx, fy, fz));
    }

    @Test
    void the_least_factor_of_all_loads_counts_and_its_load_is_named() {
        FrictionBalance balance = new FrictionBalance(Grip.of(PINCH));
        Load light = Load.force("light", Vector.ZERO, new Vector(100, 0, 0));
        Load heavy = Load.force("heavy", Vector.ZERO, new Vector(0, 0, 200));

        Answer answer = balance.answer(List.of(light, heavy, light.times(0.5), heavy));

        assertThat(answer.factor()).isCloseTo(2, within(1e-9));
        assertThat(((Answer.Holds) answer).load().name()).isEqualTo("heavy");
        assertThat(answer.words()).isEqualTo("lifts under heavy; front gives first");
    }

    @Test
    void a_load_into_a_face_that_reacts_is_held_whatever_its_size() {
        Answer answer = new FrictionBalance(Grip.of(PINCH)).answer(at(0, 0, 0, 0, 1e6, 0));

        assertThat(answer.kind()).isEqualTo(Answer.Kind.BEYOND_ASKED);
        assertThat(answer.factor()).isEqualTo(99);
        assertThat(answer.certificate().isGood()).isTrue();
    }

    @Test
    void a_factor_just_under_99_is_told_and_one_just_over_is_not() {
        FrictionBalance balance = new FrictionBalance(Grip.of(PINCH));

        assertThat(balance.answer(at(0, 0, 0, 400 / 98.9, 0, 0)).factor()).isCloseTo(98.9, within(1e-6));
        assertThat(balance.answer(at(0, 0, 0, 400 / 99.1, 0, 0)).kind()).isEqualTo(Answer.Kind.BEYOND_ASKED);
    }

    @Test
    void no_load_or_one_of_nothing_is_beyond_what_is_asked() {
        FrictionBalance balance = new FrictionBalance(Grip.of(PINCH));

        assertThat(balance.answer(Load.NONE).kind()).isEqualTo(Answer.Kind.BEYOND_ASKED);
        assertThat(balance.answer(List.of()).kind()).isEqualTo(Answer.Kind.BEYOND_ASKED);
    }

    @Test
    void a_part_too_heavy_for_its_grip_does_not_stand() {
        Grip grip = new Grip(PINCH, Load.weight(500, Vector.ZERO));

        Answer answer = new FrictionBalance(grip).answer(at(0, 0, 0, 1, 0, 0));

        assertThat(answer.kind()).isEqualTo(Answer.Kind.DOES_NOT_STAND);
        assertThat(answer.factor()).isZero();
        assertThat(answer.certificate().isGood()).isTrue();
        assertThat(answer.words()).isEqualTo("slides even without the load; front gives first");
        assertThat(((Answer.DoesNotStand) answer).motion().translation().z()).isNegative();
    }

    @Test
    void a_press_that_nothing_answers_does_not_stand() {
        Answer answer = new FrictionBalance(Grip.of(PINCH.subList(0, 1))).answer(at(0, 0, 0, 1, 0, 0));

        assertThat(answer.kind()).isEqualTo(Answer.Kind.DOES_NOT_STAND);
        assertThat(((Answer.DoesNotStand) answer).motion().translation().y()).isPositive();
    }

    @Test
    void the_own_weight_is_not_multiplied_by_the_factor() {
        Grip grip = new Grip(PINCH, Load.weight(100, Vector.ZERO));

        double down = new FrictionBalance(grip).answer(at(0, 0, 0, 0, 0, -100)).factor();
        double up = new FrictionBalance(grip).answer(at(0, 0, 0, 0, 0, 100)).factor();

        assertThat(down).isCloseTo(3, within(1e-9));
        assertThat(up).isCloseTo(5, within(1e-9));
    }

    @Test
    void what_no_contact_resists_gives_way_at_once() {
        List<Contact> smooth = List.of(
                Contact.reacting("left", new Vector(-10, 0, 0), Vector.UP, 0),
                Contact.reacting("right", new Vector(10, 0, 0), Vector.UP, 0));
        Answer answer =
                new FrictionBalance(new Grip(smooth, Load.weight(10, Vector.ZERO))).answer(at(0, 0, 0, 1, 0, 0));

        assertThat(answer.kind()).isEqualTo(Answer.Kind.HOLDS);
        assertThat(answer.factor()).isZero();
        assertThat(((Answer.Holds) answer).motion().kind()).isEqualTo(Motion.Kind.SLIDES);
        assertThat(((Answer.Holds) answer).motion().translation()).isEqualTo(new Vector(1, 0, 0));
        assertThat(answer.certificate().isGood()).isTrue();
    }

    @Test
    void a_twist_about_the_line_through_all_contacts_gives_way_at_once() {
        Answer answer = new FrictionBalance(Grip.of(PINCH)).answer(at(10, 0, 0, 0, 0, 50));

        assertThat(answer.factor()).isZero();
        assertThat(((Answer.Holds) answer).motion().kind()).isEqualTo(Motion.Kind.TIPS);
    }

    @Test
    void contacts_in_one_plane_hold_by_weight_and_friction_alone() {
        List<Contact> feet = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            feet.add(Contact.reacting("foot " + i, new Vector(i % 2 * 100, i / 2 * 100, 0), Vector.UP, 0.3));
        }
        FrictionBalance balance = new FrictionBalance(new Grip(feet, Load.weight(200, new Vector(50, 50, 40))));

        assertThat(balance.answer(at(50, 50, 0, 20, 0, 0)).factor()).isCloseTo(3, within(0.004));
        assertThat(balance.answer(at(50, 50, 500, 20, 0, 0)).factor()).isCloseTo(1, within(1e-6));
        assertThat(balance.answer(at(50, 50, 0, 0, 0, 20)).factor()).isCloseTo(10, within(1e-6));
    }

    @Test
    void two_contacts_at_one_place_are_as_good_as_one() {
        List<Contact> doubled = List.of(
                PINCH.get(0).pressing(500), PINCH.get(0).pressing(500), PINCH.get(1), PINCH.get(1), PINCH.get(1));

        double factor = new FrictionBalance(Grip.of(doubled))
                .answer(at(0, 0, 0, 100, 0, 0))
                .factor();

        assertThat(factor).isCloseTo(4, within(1e-9));
    }

    @Test
    void contacts_of_a_group_split_its_force_as_the_balance_needs_and_single_ones_do_not() {
        Vector high = new Vector(0, 0, 10);
        List<Contact> fixed = List.of(
                Contact.reacting("low", Vector.ZERO, Vector.AWAY, 0.2).pressing(500),
                Contact.reacting("high", high, Vector.AWAY, 0.2).pressing(500),
                Contact.reacting("solid, low", new Vector(0, 10, 0), Vector.AWAY.times(-1), 0.2),
                Contact.reacting("solid, high", new Vector(0, 10, 10), Vector.AWAY.times(-1), 0.2));
        List<Contact> together = new ArrayList<>(fixed);
        together.set(0, fixed.get(0).pressing(1000, "jaw"));
        together.set(1, fixed.get(1).pressing(0, "jaw"));
        Load top = at(0, 5, 20, 0, -100, 0);

        double apart = new FrictionBalance(Grip.of(fixed)).answer(top).factor();
        double shared = new FrictionBalance(Grip.of(together)).answer(top).factor();

        assertThat(shared).isGreaterThan(1.2 * apart);
    }

    @Test
    void the_order_of_the_contacts_does_not_change_the_factor() {
        List<Contact> contacts = new ArrayList<>(PINCH);
        contacts.add(Contact.reacting("under", new Vector(5, 0, -10), Vector.UP, 0.1));
        List<Contact> reversed = new ArrayList<>(contacts);
        Collections.reverse(reversed);
        Load cut = at(3, 2, 0, 60, 40, -20);

        double factor = new FrictionBalance(Grip.of(contacts)).answer(cut).factor();

        assertThat(new FrictionBalance(Grip.of(reversed)).answer(cut).factor()).isCloseTo(factor, within(1e-9));
    }

    @Test
    void the_motion_is_that_of_one_millimetre_at_the_contact_that_gives_first() {
        List<Contact> plate = List.of(
                Contact.reacting("near", Vector.ZERO, Vector.UP, 0.2),
                Contact.reacting("far", new Vector(100, 0, 0), Vector.UP, 0.2),
                Contact.reacting("strap, near", Vector.ZERO, DOWN, 0).pressing(900),
                Contact.reacting("strap, far", new Vector(100, 0, 0), DOWN, 0).pressing(100));

        Answer.Holds holds = (Answer.Holds) new FrictionBalance(Grip.of(plate)).answer(at(100, 0, 0, 0, 10, 0));

        assertThat(holds.firstToGive().name()).isEqualTo("far");
        assertThat(holds.motion().kind()).isEqualTo(Motion.Kind.TURNS);
        assertThat(holds.motion().rotation().z()).isCloseTo(0.01, within(1e-6));
        assertThat(holds.motion().translation().y()).isCloseTo(0.5, within(1e-6));
        assertThat(holds.factor()).isCloseTo(2, within(1e-6));
    }

    @Test
    void a_worked_answer_names_rule_inputs_and_the_deciding_case() {
        Answer answer = new FrictionBalance(Grip.of(PINCH)).answer(at(0, 0, 0, 200, 0, 0));

        var worked = FrictionBalance.worked(answer, Given.of("grip", 1000, Unit.KN, "s1/grip"));

        assertThat(worked.name()).isEqualTo("hold factor");
        assertThat(worked.inside()).isCloseTo(2, within(1e-9));
        assertThat(worked.deciding()).isEqualTo("slides under cut; front gives first");
        assertThat(worked.from()).hasSize(1);
        assertThat(worked.rule().text()).contains("friction cone", "proved by the motion");
    }

    @Test
    void contacts_and_loads_that_are_none_are_refused_with_their_name() {
        assertThatThrownBy(() -> new Contact("toe", Vector.ZERO, new Vector(0, 0, 2), 0.1, null))
                .hasMessageContaining("toe is 2.0 long");
        assertThatThrownBy(() -> Contact.reacting("toe", Vector.ZERO, Vector.UP, -0.1))
                .hasMessageContaining("toe is -0.1");
        assertThatThrownBy(() -> Contact.reacting("toe", Vector.ZERO, Vector.ZERO, 0.1))
                .hasMessageContaining("no direction");
        assertThatThrownBy(() -> PINCH.get(0).pressing(-1)).hasMessageContaining("-1.0 N");
        assertThatThrownBy(() -> new Vector(Double.NaN, 0, 0)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Grip.of(List.of())).hasMessageContaining("at least one contact");
    }
}
