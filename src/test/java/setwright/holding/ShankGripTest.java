package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.Unit;

class ShankGripTest {
    static Stream<Example> examples() {
        return Example.startingWith("shank-grip.csv", "SHANK");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void what_holds_along_the_shank_holds_round_it_by_half_its_diameter(Example example) {
        double torque = ShankGrip.slipTorque(Unit.LBF.toInside(example.input("F_lbf")), example.input("d_mm"));

        example.holdsFor(Unit.N_M.fromInside(torque));
    }

    @Test
    void a_spindle_collet_holds_sixfold_better_or_worse() {
        assertThat(ShankGrip.r8Collet().high() / ShankGrip.r8Collet().low()).isCloseTo(6.25, within(1e-9));
    }
}
