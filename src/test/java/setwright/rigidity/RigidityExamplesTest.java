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
            entry("plate with resting edges", in -> in.held(PlateTable.EDGES_REST)),
            entry("plate with fixed edges", in -> in.held(PlateTable.EDGES_FIXED)),
            entry(
                    "plate on two parallels in its middle",
                    in -> in.spanning(PlateTable.PARALLELS_MIDDLE.at(in.of("w") / in.of("L")))),
            entry("strip on two parallels", in -> in.spanning(Plate.beam(48, in.of("w") / in.of("L")))),
            entry("shrink fit pressure", in -> in.pressure()),
            entry("shrink fit torque", in -> in.shrunk().slips(in.of("mu"), in.pressure())),
            entry("shrink fit pull", in -> in.shrunk().pullsOut(in.of("mu"), in.pressure())),
            entry(
                    "share of the tool",
                    in -> in.of("F") * (in.bench().total() - in.bench().machine())),
            entry("share of the machine", in -> in.of("F") * in.bench().machine()),
            entry("coefficient of an overhang", in -> PlateTable.OVERHANG.at(in.of("ratio"))),
            entry("coefficient on parallels middle", in -> PlateTable.PARALLELS_MIDDLE.at(in.of("ratio"))),
            entry("coefficient on parallels edge", in -> PlateTable.PARALLELS_EDGE.at(in.of("ratio"))),
            entry("coefficient of resting edges", in -> PlateTable.EDGES_REST.at(in.of("ratio"))),
            entry("coefficient of fixed edges", in -> PlateTable.EDGES_FIXED.at(in.of("ratio"))),
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

        double held(PlateTable edges) {
            return Plate.heldAllRound(edges.at(of("ratio")), of("W"), of("b"), of("E"), of("t"));
        }

        double spanning(double c) {
            return Plate.spanning(c, of("W"), of("L"), of("E"), of("t"));
        }

        ShrinkFit shrunk() {
            return new ShrinkFit(of("D"), of("outside"), of("grip"), of("i"));
        }

        double pressure() {
            return shrunk().pressure(of("H"), of("E"), of("v"));
        }

        /** A tool that is known as a spring stands for its clamp: its beam is as good as rigid. */
        Compliance bench() {
            var springs = new Springs(of("tool"), Double.POSITIVE_INFINITY, of("machine"));
            return new MountedTool(ToolBeam.rod(1, 1000, 210000), springs).compliance(1, 1);
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
