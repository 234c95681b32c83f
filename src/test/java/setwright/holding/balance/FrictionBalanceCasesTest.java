package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.holding.Friction;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.ViseForms;
import setwright.holding.ViseGrip;
import setwright.quantity.Source;

/** Two hundred parts, clamps and loads or more, and what has to hold of every answer. */
class FrictionBalanceCasesTest {
    private static final int CASES = Math.max(200, Rounds.count(200));

    private static Grip grip(RandomGenerator random, int round) {
        return round % 2 == 0 ? RandomGrips.strapped(random) : RandomGrips.vise(random);
    }

    @Test
    void loads_presses_and_weight_taken_larger_together_leave_the_factor() {
        Rounds.each(41, CASES, (random, round) -> {
            Grip grip = grip(random, round);
            List<Load> loads = RandomGrips.cuts(random, 6);
            double larger = random.nextDouble(0.05, 20);

            double before = new FrictionBalance(grip).answer(loads).factor();
            double after = new FrictionBalance(times(grip, larger))
                    .answer(loads.stream().map(load -> load.times(larger)).toList())
                    .factor();

            assertThat(after).isCloseTo(before, within(1e-6 * Math.max(1, before)));
        });
    }

    @Test
    void a_strap_squarely_over_a_support_never_lowers_the_factor() {
        Rounds.each(42, CASES, (random, round) -> {
            Grip grip = RandomGrips.strapped(random);
            List<Load> loads = RandomGrips.cuts(random, 6);
            List<Contact> supports = grip.contacts().stream()
                    .filter(contact -> contact.press() == null)
                    .toList();
            Contact support = supports.get(random.nextInt(supports.size()));
            Vector over = support.at().plus(Vector.UP.times(random.nextDouble(5, 80)));
            List<Contact> more = new ArrayList<>(grip.contacts());
            more.add(Contact.reacting("one more strap", over, support.normal().times(-1), 0)
                    .pressing(random.nextDouble(1000, 20000)));

            double before = new FrictionBalance(grip).answer(loads).factor();
            double after = new FrictionBalance(new Grip(more, grip.ownWeight()))
                    .answer(loads)
                    .factor();

            assertThat(after).isGreaterThanOrEqualTo(before - 1e-6 * Math.max(1, before));
        });
    }

    @Test
    void sixty_four_edges_are_never_below_the_sixteen_that_they_contain() {
        Rounds.each(43, CASES, (random, round) -> {
            Grip grip = grip(random, round);
            List<Load> loads = RandomGrips.cuts(random, 4);

            double sixteen = new FrictionBalance(grip, 16).answer(loads).factor();
            double more = new FrictionBalance(grip, 64).answer(loads).factor();

            assertThat(more).isGreaterThanOrEqualTo(sixteen - 1e-6 * Math.max(1, sixteen));
        });
    }

    /** No balance, and none that is ever lost, are answers in words with their proof; never an exception, never a NaN. */
    @Test
    void every_answer_passes_its_certificate_and_is_said_in_words() {
        Rounds.each(44, CASES, (random, round) -> {
            Grip grip = round % 3 == 0 ? RandomGrips.awkward(random) : grip(random, round);

            Answer answer = new FrictionBalance(grip).answer(RandomGrips.cuts(random, 3));

            assertThat(answer.certificate().isGood())
                    .as("%s", answer.certificate())
                    .isTrue();
            assertThat(answer.factor()).isBetween(0.0, Answer.BEYOND);
            assertThat(answer.words()).isNotBlank().doesNotContain("NaN");
        });
    }

    @Test
    void the_loads_of_a_whole_operation_are_borne_as_often_as_the_worst_of_them_alone() {
        Rounds.each(45, 20, (random, round) -> {
            Grip grip = grip(random, round);
            List<Load> loads = RandomGrips.operation(random);

            double together = new FrictionBalance(grip).answer(loads).factor();
            double least = loads.stream()
                    .mapToDouble(load -> new FrictionBalance(grip).answer(load).factor())
                    .min()
                    .orElseThrow();

            assertThat(together).isCloseTo(least, within(1e-6 * Math.max(1, least)));
        });
    }

    /** 64 inscribed edges take at most 1 - cos(π / 64) = 0.12 % of the friction away; at h = g the corner may tip either way. */
    @Test
    void the_closed_forms_of_a_vise_are_met_within_the_error_of_the_cone() {
        Rounds.each(46, CASES, (random, round) -> {
            double depth = random.nextDouble(10, 100);
            double gripped = random.nextDouble(5, 40);
            double height = gripped + random.nextDouble(1, 60);
            double friction = random.nextDouble(0.05, 0.4);
            double asked = random.nextDouble(2000, 25000);
            Jaws jaws =
                    new Jaws(152, Jaws.Solid.BACK, new Friction(friction, friction, Source.of("drawn for this case")));
            ViseGrip vise = ViseGrip.of(Held.central(100, depth, gripped), jaws, asked);
            FrictionBalance balance = new FrictionBalance(vise.grip(Outlook.EXPECTED, Load.NONE));
            Vector at = new Vector(50, depth / 2, height);

            double along = balance.answer(
                            Load.force("", new Vector(50, depth / 2, gripped / 2), new Vector(1000, 0, 0)))
                    .factor();
            double away =
                    balance.answer(Load.force("", at, new Vector(0, -1000, 0))).factor();
            double toward =
                    balance.answer(Load.force("", at, new Vector(0, 1000, 0))).factor();

            near(along, asked / ViseForms.along(1000, friction));
            near(away, asked / (1000 * ViseForms.shareAway(height, friction, depth, gripped)));
            near(toward, asked / (1000 * ViseForms.shareToward(height, friction, depth, gripped)));
        });
    }

    private static void near(double factor, double closed) {
        if (closed < 0.99 * Answer.BEYOND) {
            assertThat(factor).isBetween(0.9987 * closed, 1.0001 * closed);
        }
    }

    private static Grip times(Grip grip, double larger) {
        List<Contact> contacts = new ArrayList<>();
        for (Contact contact : grip.contacts()) {
            Press press = contact.press();
            contacts.add(press == null ? contact : contact.pressing(larger * press.newtons(), press.group()));
        }
        return new Grip(contacts, grip.ownWeight().times(larger));
    }
}
