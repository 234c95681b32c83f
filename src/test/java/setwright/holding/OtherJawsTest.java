package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.quantity.Source;

/** Round bar and V-grooved jaws against statics by hand. */
class OtherJawsTest {
    private static final Percentage CONE = Percentage.withPercentage(0.2);

    private static Friction friction(double mu) {
        return new Friction(mu, mu, Source.of("for a test"));
    }

    private static double held(ViseGrip grip, Vector at, Vector force) {
        return new FrictionBalance(grip.grip(Outlook.EXPECTED, Load.NONE))
                .answer(List.of(Load.force("push", at, force)))
                .factor();
    }

    /**
     * About the line of the bar, at half the grip g: P (h - g/2) away from the solid jaw is borne by what that jaw presses
     * low down, N - P at the lever g/2, and by its friction across the width w. N = P (h + µ w) / (g/2 + µ w).
     */
    @Test
    void on_a_round_bar_a_push_away_from_the_solid_jaw_wants_the_grip_that_moments_about_the_bar_ask() {
        Rounds.each(11, (random, round) -> {
            double mu = 0.1 + 0.2 * random.nextDouble();
            double width = 20 + 60 * random.nextDouble();
            double grip = 10 + 20 * random.nextDouble();
            double height = grip + 40 * random.nextDouble();
            Held held = Held.central(80, width, grip);
            ViseGrip bar = ViseGrip.of(held, new Jaws(150, Jaws.Solid.BACK, friction(mu)), 10_000)
                    .by(ViseGrip.Moving.BAR);
            double byHand = 10_000 * (grip / 2 + mu * width) / (height + mu * width);
            assertThat(1000 * held(bar, new Vector(40, width / 2, height), new Vector(0, -1000, 0)))
                    .isCloseTo(byHand, CONE);
        });
    }

    @Test
    void a_push_along_the_bar_is_borne_by_the_friction_of_both_jaws_as_without_it() {
        Held held = Held.central(80, 40, 20);
        ViseGrip bar = ViseGrip.of(held, Jaws.smooth(150), 10_000).by(ViseGrip.Moving.BAR);
        assertThat(1000 * held(bar, new Vector(40, 20, 10), new Vector(1000, 0, 0)))
                .isCloseTo(2 * 0.15 * 10_000, CONE);
    }

    /** Each flank of a vee of 90 degrees bears N/√2; all three lines rub at the radius: r µ N (1 + √2). */
    @Test
    void a_bar_in_a_vee_is_turned_by_more_than_all_three_lines_rub() {
        for (boolean standing : List.of(false, true)) {
            VeeGrip vee = new VeeGrip(30, 80, standing, 20, Math.PI / 2, 15_000, friction(0.15));
            Vector about = standing ? Vector.UP : Vector.RIGHT;
            Vector middle = standing ? new Vector(15, 15, 10) : new Vector(40, 15, 15);
            Load turn = new Load("turn", middle, Vector.ZERO, about.times(1000));
            double factor = new FrictionBalance(vee.grip(Outlook.EXPECTED, Load.NONE))
                    .answer(List.of(turn))
                    .factor();
            assertThat(1000 * factor)
                    .as("standing %s", standing)
                    .isCloseTo(15 * 0.15 * 15_000 * (1 + Math.sqrt(2)), CONE);
        }
    }

    /** Friction across the flanks wedges it a little more: up to a hundredth over µ N (1 + √2), never less. */
    @Test
    void a_bar_is_drawn_out_of_a_vee_by_what_all_three_lines_rub() {
        VeeGrip vee = new VeeGrip(30, 80, false, 20, Math.PI / 2, 15_000, friction(0.15));
        double factor = new FrictionBalance(vee.grip(Outlook.EXPECTED, Load.NONE))
                .answer(List.of(Load.force("pull", new Vector(80, 15, 15), new Vector(1000, 0, 0))))
                .factor();
        double lines = 0.15 * 15_000 * (1 + Math.sqrt(2));
        assertThat(1000 * factor).isBetween(0.998 * lines, 1.01 * lines);
    }

    @Test
    void no_friction_is_answered_and_less_than_none_is_refused_in_words() {
        ViseGrip slippery = ViseGrip.of(Held.central(80, 40, 20), new Jaws(150, Jaws.Solid.BACK, friction(0)), 10_000);
        assertThat(held(slippery, new Vector(40, 20, 10), new Vector(1000, 0, 0)))
                .isZero();
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> friction(-0.1)))
                .hasMessageContaining("Friction is 0 or more");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> friction(Double.NaN)))
                .hasMessageContaining("Friction is 0 or more");
    }
}
