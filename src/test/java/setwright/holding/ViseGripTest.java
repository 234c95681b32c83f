package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.holding.balance.Answer;
import setwright.holding.balance.Contact;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Load;
import setwright.holding.balance.Motion;
import setwright.holding.balance.Vector;
import setwright.quantity.Source;

class ViseGripTest {
    private static final Held BLOCK = Held.central(80, 50, 20);
    private static final ViseGrip FIRM = ViseGrip.of(BLOCK, Jaws.smooth(152.4), 15000);

    @Test
    void the_moving_jaw_presses_with_the_grip_in_sum_and_everything_else_reacts() {
        ViseGrip grip = FIRM.on(Packing.parallels(BLOCK, 0))
                .against(new EndStop(EndStop.End.LEFT, 25, 10, Friction.GROUND_PARALLEL));

        List<Contact> contacts = grip.contacts(Outlook.EXPECTED);

        assertThat(contacts).hasSize(13);
        assertThat(contacts.stream().filter(c -> c.press() != null))
                .hasSize(4)
                .allMatch(c -> c.name().startsWith("moving jaw"))
                .allMatch(c -> Objects.requireNonNull(c.press()).group().equals("moving jaw"));
        assertThat(grip.grip(Outlook.EXPECTED, Load.NONE).pressed()).isCloseTo(15000, within(1e-9));
        assertThat(grip.grip(Outlook.PESSIMISTIC, Load.NONE).pressed()).isCloseTo(12000, within(1e-9));
    }

    @Test
    void the_solid_jaw_stands_behind_or_as_given_and_both_push_into_the_part() {
        assertThat(places(FIRM, "solid jaw"))
                .allMatch(c -> c.at().y() == 50 && c.normal().y() == -1);
        assertThat(places(FIRM, "moving jaw"))
                .allMatch(c -> c.at().y() == 0 && c.normal().y() == 1);

        ViseGrip turned = ViseGrip.of(BLOCK, new Jaws(152.4, Jaws.Solid.FRONT, Friction.SMOOTH_HARDENED_JAW), 15000);
        assertThat(places(turned, "solid jaw"))
                .allMatch(c -> c.at().y() == 0 && c.normal().y() == 1);
    }

    @Test
    void jaws_touch_the_part_no_farther_than_both_reach() {
        ViseGrip longPart = ViseGrip.of(new Held(300, 50, 20, 10), Jaws.smooth(100), 5000);
        ViseGrip atTheEnd = ViseGrip.of(new Held(80, 50, 20, 60), Jaws.smooth(152), 5000);

        assertThat(xs(longPart)).containsExactly(90.0, 190.0);
        assertThat(xs(atTheEnd)).containsExactly(0.0, 56.0);
        assertThatThrownBy(() -> ViseGrip.of(new Held(80, 50, 20, 130), Jaws.smooth(152), 5000))
                .hasMessageContaining("130.0 mm off");
    }

    @Test
    void only_half_of_the_friction_of_what_merely_reacts_is_counted() {
        ViseGrip grip = FIRM.on(Packing.parallels(BLOCK, 5));

        assertThat(places(grip, "packing"))
                .hasSize(4)
                .allMatch(c -> c.friction() == 0.5 * Friction.GROUND_PARALLEL.expected())
                .allMatch(c -> c.at().z() == 0 && c.normal().equals(Vector.UP))
                .anyMatch(c -> c.at().y() == 5)
                .anyMatch(c -> c.at().y() == 45);
        assertThat(places(grip, "solid jaw")).allMatch(c -> c.friction() == 0.15);
        assertThat(grip.contacts(Outlook.PESSIMISTIC).get(0).friction()).isEqualTo(0.10);
    }

    @Test
    void a_force_square_to_the_jaws_is_held_as_the_closed_forms_say() {
        Rounds.each(41, (random, round) -> {
            double g = random.nextDouble(5, 40);
            double h = g * random.nextDouble(1.1, 4);
            double w = random.nextDouble(10, 100);
            double mu = random.nextDouble(0.08, 0.4);
            Friction friction = new Friction(mu, mu, Source.of("typed here"));
            ViseGrip grip = ViseGrip.of(Held.central(80, w, g), new Jaws(152, Jaws.Solid.BACK, friction), 10000);
            FrictionBalance balance = new FrictionBalance(grip.grip(Outlook.EXPECTED, Load.NONE));
            Vector at = new Vector(40, w / 2, h);

            double away =
                    balance.answer(Load.force("", at, new Vector(0, -1000, 0))).factor();
            double toward =
                    balance.answer(Load.force("", at, new Vector(0, 1000, 0))).factor();

            assertThat(away).isCloseTo(10 / ViseForms.shareAway(h, mu, w, g), within(0.002 * away));
            double formula = Math.min(Answer.BEYOND, 10 / ViseForms.shareToward(h, mu, w, g));
            assertThat(toward).isCloseTo(formula, within(0.002 * toward));
        });
    }

    @Test
    void a_pull_along_or_up_in_the_middle_of_the_jaws_is_held_by_both_faces() {
        FrictionBalance balance = new FrictionBalance(FIRM.grip(Outlook.EXPECTED, Load.NONE));
        Vector middle = new Vector(40, 25, 10);
        double expected = 15000 / ViseForms.along(1000, 0.15);

        Answer along = balance.answer(Load.force("", middle, new Vector(1000, 0, 0)));
        Answer up = balance.answer(Load.force("", middle, new Vector(0, 0, 1000)));

        assertThat(along.factor()).isCloseTo(expected, within(0.002 * expected));
        assertThat(up.factor()).isCloseTo(expected, within(0.002 * expected));
        assertThat(((Answer.Holds) along).motion().kind()).isEqualTo(Motion.Kind.SLIDES);
        assertThat(((Answer.Holds) up).motion().kind()).isEqualTo(Motion.Kind.LIFTS);
    }

    @Test
    void a_push_at_the_top_away_from_the_solid_jaw_tips_the_part() {
        FrictionBalance balance = new FrictionBalance(FIRM.grip(Outlook.EXPECTED, Load.NONE));

        Answer answer = balance.answer(Load.force("face", new Vector(40, 25, 60), new Vector(0, -1000, 0)));

        assertThat(((Answer.Holds) answer).motion().kind()).isEqualTo(Motion.Kind.TIPS);
        assertThat(answer.words())
                .startsWith("tips under face; ")
                .contains(" jaw, ")
                .endsWith(" gives first");
    }

    @Test
    void an_end_stop_takes_a_push_along_the_jaws() {
        Load push = Load.force("", new Vector(40, 25, 10), new Vector(-3000, 0, 0));
        ViseGrip stopped = FIRM.against(new EndStop(EndStop.End.LEFT, 25, 10, Friction.GROUND_PARALLEL));

        double without = new FrictionBalance(FIRM.grip(Outlook.EXPECTED, Load.NONE))
                .answer(push)
                .factor();
        Answer with = new FrictionBalance(stopped.grip(Outlook.EXPECTED, Load.NONE)).answer(push);

        assertThat(without).isLessThan(2);
        assertThat(with.kind()).isEqualTo(Answer.Kind.BEYOND_ASKED);
    }

    @Test
    void two_outlooks_make_one_hold_factor() {
        Load cut = Load.force("", new Vector(40, 25, 38), new Vector(400, 300, 150));
        FrictionBalance expected = new FrictionBalance(FIRM.grip(Outlook.EXPECTED, Load.NONE));
        FrictionBalance pessimistic = new FrictionBalance(FIRM.grip(Outlook.PESSIMISTIC, Load.NONE));

        HoldFactor factor = HoldFactor.of(expected.answer(cut), pessimistic.answer(cut));

        assertThat(factor.pessimistic()).isPositive().isLessThan(0.7 * factor.expected());
    }

    private static List<Contact> places(ViseGrip grip, String name) {
        return grip.contacts(Outlook.EXPECTED).stream()
                .filter(contact -> contact.name().startsWith(name))
                .toList();
    }

    private static List<Double> xs(ViseGrip grip) {
        return places(grip, "solid jaw").stream()
                .map(contact -> contact.at().x())
                .distinct()
                .sorted()
                .toList();
    }
}
