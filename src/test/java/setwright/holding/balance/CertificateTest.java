package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is spoiled in a solution has to show in its certificate. */
class CertificateTest {
    private static final Grip PINCH = Grip.of(List.of(
            Contact.reacting("front", new Vector(0, -10, 0), Vector.AWAY, 0.2).pressing(1000),
            Contact.reacting("back", new Vector(0, 10, 0), Vector.AWAY.times(-1), 0.2)));
    private static final Cones CONES = new Cones(PINCH, 16);
    private static final double[] PUSH = CONES.load(Load.force("", Vector.ZERO, Vector.RIGHT));
    private static final Solution GOOD =
            Simplex.standing(CONES).orElseThrow().push(PUSH, 99).orElseThrow();

    private static Certificate of(double[] weights, double push, double[] dual) {
        return Certificate.of(CONES, PUSH, new Solution(Solution.Proves.EXACTLY, weights, push, dual));
    }

    private static double[] with(double[] numbers, int index, double add) {
        double[] changed = numbers.clone();
        changed[index] += add;
        return changed;
    }

    @Test
    void a_true_solution_is_proved() {
        assertThat(of(GOOD.weights(), GOOD.push(), GOOD.dual()).isGood()).isTrue();
    }

    @Test
    void a_force_too_much_a_pull_and_another_push_show_as_residual() {
        assertThat(of(with(GOOD.weights(), 3, 1e-5), GOOD.push(), GOOD.dual()).isGood())
                .isFalse();
        assertThat(of(GOOD.weights(), GOOD.push() + 1e-5, GOOD.dual()).residual())
                .isGreaterThan(1e-6);
        double[] pulling = with(with(GOOD.weights(), 3, -0.5), 3 + 8, -0.5);
        assertThat(of(pulling, GOOD.push(), GOOD.dual()).residual()).isGreaterThan(0.1);
    }

    @Test
    void a_motion_into_a_contact_shows_as_sign_and_one_that_is_too_fast_as_gap() {
        double[] pressed = with(GOOD.dual(), 1, 0.5);
        assertThat(of(GOOD.weights(), GOOD.push(), pressed).sign()).isLessThan(-0.01);
        double[] faster = GOOD.dual().clone();
        for (int i = 0; i < faster.length; i++) {
            faster[i] *= 1.001;
        }
        assertThat(of(GOOD.weights(), GOOD.push(), faster).gap()).isGreaterThan(1e-4);
    }

    @Test
    void a_grip_that_stands_cannot_be_proved_not_to() {
        Solution claim = new Solution(Solution.Proves.NOTHING, new double[CONES.columns()], 0, GOOD.dual());

        assertThat(Certificate.of(CONES, PUSH, claim).isGood()).isFalse();
    }

    @Test
    void the_worse_of_two_certificates_counts() {
        Certificate worse = new Certificate(1e-9, 0, 1e-8).with(new Certificate(0, -1e-9, 0));

        assertThat(worse).isEqualTo(new Certificate(1e-9, -1e-9, 1e-8));
    }
}
