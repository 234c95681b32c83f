package setwright.rigidity;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.cutting.CheckRow;

/** Published examples of rods and tools, and some that were computed independently of this code. */
class RigidityExamplesTest {
    private static final Map<String, ToDoubleFunction<Inputs>> RULES = Map.ofEntries(
            entry("inertia", in -> Rod.inertia(in.of("D"))),
            entry("inertia ratio", in -> Rod.inertia(in.of("core")) / Rod.inertia(1)),
            entry("rod deflection", in -> Rod.deflection(in.of("F"), in.of("L"), in.of("E"), in.of("D"))),
            entry(
                    "thicker rod",
                    in -> in.of("before") * Rod.deflection(1, 1, 1, in.of("ratio")) / Rod.deflection(1, 1, 1, 1)),
            entry("longer rod", in -> Rod.deflection(1, in.of("ratio"), 1, 1) / Rod.deflection(1, 1, 1, 1)),
            entry("end mill at the tip", in -> in.fluted(in.of("L")).tipDeflection(in.of("F"), in.of("L"))),
            entry("end mill loaded below the tip", in -> in.fluted(in.of("L")).tipDeflection(in.of("F"), in.of("a"))),
            entry("tip stiffness", RigidityExamplesTest::tipStiffness),
            entry("chain of springs", RigidityExamplesTest::chainOfSprings),
            entry("flat part that stands out", in -> Plank.deflection(in.of("F"), in.of("L"), in.of("E"), in.plank())),
            entry("flat part bent at its ends", in -> Plank.bow(in.of("M"), in.of("L"), in.of("E"), in.plank())),
            entry("column", in -> Rod.buckling(Rod.Ends.FIXED_PINNED.factor(), in.of("E"), in.of("D"), in.of("L"))));

    static List<CheckRow> rows() {
        return CheckRow.of(RigidityExamplesTest.class, "worked-examples.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void the_kernel_gives_what_the_source_says(CheckRow row) {
        var rule = Objects.requireNonNull(RULES.get(row.cell("rule")), row.cell("rule"));

        double worked = rule.applyAsDouble(new Inputs(row.inputs()));

        assertThat(worked).isCloseTo(row.expected(), withinPercentage(100 * row.tolerance()));
    }

    private static double tipStiffness(Inputs in) {
        double length = in.of("ratio") * in.of("D");
        return in.fluted(length).compliance(length, length).stiffness();
    }

    private static double chainOfSprings(Inputs in) {
        double length = in.of("L");
        var springs = new Springs(in.of("shift"), in.of("tilt"), in.of("machine"));
        Compliance all = new MountedTool(ToolBeam.rod(length, 10, 210000), springs).compliance(length, length);
        return in.of("tool") + in.of("F") * (all.total() - all.tool());
    }

    private record Inputs(Map<String, Double> values) {
        double of(String name) {
            return Objects.requireNonNull(values.get(name), name);
        }

        Plank plank() {
            return new Plank(of("w"), of("h"));
        }

        MountedTool fluted(double length) {
            var tool = new FlutedTool(of("D"), length, of("D"), of("core"));
            return new MountedTool(tool.beam(length, of("E")), Springs.RIGID);
        }
    }
}
