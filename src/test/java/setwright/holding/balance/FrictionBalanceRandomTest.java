package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class FrictionBalanceRandomTest {
    private static final int CASES = Math.max(300, Rounds.count(300));

    @Test
    void every_answer_has_its_certificate_and_agrees_with_the_second_opinion() {
        Rounds.each(20, CASES, (random, round) -> {
            Grip grip = grip(random, round);
            List<Load> loads = RandomGrips.cuts(random, 1);

            Answer ours = new FrictionBalance(grip, 16).answer(loads);
            Answer other = FrictionBalance.bySecondOpinion(grip, 16).answer(loads);

            assertThat(ours.certificate().isGood()).as("%s", ours.certificate()).isTrue();
            assertThat(ours.kind()).isEqualTo(other.kind());
            assertThat(ours.factor()).isCloseTo(other.factor(), within(1e-6 * Math.max(1, other.factor())));
        });
    }

    @Test
    void our_own_programme_needs_no_second_opinion_however_awkward_the_contacts() {
        Rounds.each(21, 10 * CASES, (random, round) -> {
            Cones cones = new Cones(RandomGrips.awkward(random), 16);
            Simplex simplex = Simplex.standing(cones).orElseThrow();
            for (Load load : RandomGrips.cuts(random, 2)) {
                Question question = Question.of(cones, load);
                Solution solution = simplex.stands()
                        ? simplex.push(question.column(), 99 * question.size() / cones.force())
                                .orElseThrow()
                        : simplex.nothing();
                Certificate certificate = Certificate.of(cones, question.column(), solution);
                assertThat(certificate.isGood()).as("%s", certificate).isTrue();
            }
        });
    }

    @Test
    void the_factor_of_many_loads_is_the_least_of_each() {
        Rounds.each(22, (random, round) -> {
            FrictionBalance balance = new FrictionBalance(grip(random, round));
            List<Load> loads = round % 2 == 0 ? RandomGrips.turn(random, 8) : RandomGrips.cuts(random, 12);

            double least = loads.stream()
                    .mapToDouble(load -> balance.answer(load).factor())
                    .min()
                    .orElseThrow();

            assertThat(balance.answer(loads).factor()).isCloseTo(least, within(1e-6 * Math.max(1, least)));
        });
    }

    @Test
    void a_load_between_loads_that_hold_holds() {
        Rounds.each(23, (random, round) -> {
            FrictionBalance balance = new FrictionBalance(grip(random, round));
            List<Load> loads = RandomGrips.cuts(random, 2);
            Load between = between(loads.get(0), loads.get(1), random.nextDouble());

            assertThat(balance.answer(between).factor())
                    .isGreaterThanOrEqualTo(balance.answer(loads).factor() * (1 - 1e-6));
        });
    }

    @Test
    void more_grip_never_lowers_the_factor() {
        Rounds.each(24, (random, round) -> {
            Grip grip = RandomGrips.vise(random);
            Load load = RandomGrips.cuts(random, 1).get(0);

            double before = new FrictionBalance(grip).answer(load).factor();
            double after = new FrictionBalance(pressed(grip, random.nextDouble(1, 3)))
                    .answer(load)
                    .factor();

            assertThat(after).isGreaterThanOrEqualTo(before * (1 - 1e-9));
        });
    }

    @Test
    void half_the_load_is_borne_twice_as_often() {
        Rounds.each(25, (random, round) -> {
            FrictionBalance balance = new FrictionBalance(grip(random, round));
            Load load = RandomGrips.cuts(random, 1).get(0);

            double whole = balance.answer(load).factor();

            assertThat(balance.answer(load.times(0.5)).factor())
                    .isCloseTo(Math.min(99, 2 * whole), within(1e-6 * Math.max(1, whole)));
        });
    }

    @Test
    void a_grip_of_another_size_under_other_forces_bears_as_much() {
        Rounds.each(26, (random, round) -> {
            Grip grip = grip(random, round);
            Load load = RandomGrips.cuts(random, 1).get(0);
            double size = random.nextDouble(0.05, 20);
            double force = random.nextDouble(0.05, 20);

            double factor = new FrictionBalance(grip).answer(load).factor();
            double other = new FrictionBalance(scaled(grip, size, force))
                    .answer(scaled(load, size, force))
                    .factor();

            assertThat(other).isCloseTo(factor, within(1e-6 * Math.max(1, factor)));
        });
    }

    /** The kinematic theorem with round cones, from the contacts themselves: no balance beyond what the motion bounds. */
    @Test
    void the_motion_that_starts_bounds_the_factor_by_its_power() {
        Rounds.each(27, CASES, (random, round) -> {
            Grip grip = grip(random, round);
            Load load = RandomGrips.cuts(random, 1).get(0);
            Answer answer = new FrictionBalance(grip).answer(load);
            if (answer instanceof Answer.Holds holds && holds.factor() > 0.01) {
                double bound = bound(grip, holds);
                assertThat(bound).isBetween(holds.factor() * (1 - 1e-6), holds.factor() * 1.02);
            }
        });
    }

    @Test
    void sixteen_edges_cost_no_more_than_two_per_cent_of_the_friction_would() {
        Rounds.each(28, (random, round) -> {
            Grip grip = Grip.of(RandomGrips.vise(random).contacts());
            Load load = RandomGrips.cuts(random, 1).get(0);

            double sixteen = new FrictionBalance(grip, 16).answer(load).factor();
            double many = new FrictionBalance(grip, 256).answer(load).factor();
            double slipperier = new FrictionBalance(rubbing(grip, Math.cos(Math.PI / 16)), 256)
                    .answer(load)
                    .factor();

            assertThat(sixteen).isBetween(slipperier * (1 - 1e-9), many * (1 + 1e-9));
        });
    }

    private static Grip grip(RandomGenerator random, int round) {
        return round % 4 == 0 ? RandomGrips.strapped(random) : RandomGrips.vise(random);
    }

    private static double bound(Grip grip, Answer.Holds holds) {
        double slack = Math.cos(Math.PI / FrictionBalance.EDGES);
        Map<String, Double> closing = new LinkedHashMap<>();
        Map<String, Double> pressed = new LinkedHashMap<>();
        for (Contact contact : grip.contacts()) {
            Vector speed = speed(grip, holds.motion(), contact.at());
            double square = speed.dot(contact.normal());
            double slip = speed.minus(contact.normal().times(square)).length();
            Press press = contact.press();
            if (press == null) {
                assertThat(square).as(contact.name()).isGreaterThan(slack * contact.friction() * slip - 1e-6);
            } else {
                String group = press.group().isEmpty() ? contact.toString() : press.group();
                closing.merge(group, contact.friction() * slip - square, Math::max);
                pressed.merge(group, press.newtons(), Double::sum);
            }
        }
        double resisted = -power(grip, holds.motion(), grip.ownWeight());
        for (var group : closing.entrySet()) {
            resisted += group.getValue() * pressed.get(group.getKey());
        }
        return resisted / power(grip, holds.motion(), holds.load());
    }

    private static Vector speed(Grip grip, Motion motion, Vector at) {
        return motion.translation().plus(motion.rotation().cross(at.minus(grip.centre())));
    }

    private static double power(Grip grip, Motion motion, Load load) {
        return speed(grip, motion, load.at()).dot(load.force())
                + motion.rotation().dot(load.moment());
    }

    private static Load between(Load a, Load b, double share) {
        Vector force = a.force().times(1 - share).plus(b.force().times(share));
        Vector moment =
                a.about(Vector.ZERO).times(1 - share).plus(b.about(Vector.ZERO).times(share));
        return new Load("between", Vector.ZERO, force, moment);
    }

    private static Grip rubbing(Grip grip, double share) {
        return Grip.of(grip.contacts().stream()
                .map(c -> new Contact(c.name(), c.at(), c.normal(), share * c.friction(), c.press()))
                .toList());
    }

    private static Grip pressed(Grip grip, double factor) {
        return new Grip(scaledContacts(grip, 1, factor), grip.ownWeight());
    }

    private static Grip scaled(Grip grip, double size, double force) {
        return new Grip(scaledContacts(grip, size, force), scaled(grip.ownWeight(), size, force));
    }

    private static List<Contact> scaledContacts(Grip grip, double size, double force) {
        List<Contact> scaled = new ArrayList<>();
        for (Contact c : grip.contacts()) {
            Contact moved = new Contact(c.name(), c.at().times(size), c.normal(), c.friction(), null);
            Press press = c.press();
            scaled.add(press == null ? moved : moved.pressing(force * press.newtons(), press.group()));
        }
        return scaled;
    }

    private static Load scaled(Load load, double size, double force) {
        return new Load(
                load.name(),
                load.at().times(size),
                load.force().times(force),
                load.moment().times(size * force));
    }
}
