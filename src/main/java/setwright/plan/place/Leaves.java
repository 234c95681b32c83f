package setwright.plan.place;

import java.util.List;
import java.util.Optional;
import setwright.location.Contributor;
import setwright.plan.cut.CutPlan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Source;
import setwright.quantity.Value;

/** What the last pass of an operation leaves on its surface: it is there every time, so it always adds. */
public final class Leaves {
    public static final String NAME = "what the last pass leaves";

    private static final Source SPRING = Source.of("computed: spring of the tool under the cut");

    private Leaves() {}

    static List<Contributor> of(CutPlan cut, String operation) {
        Optional<Value> left = cut.operation(operation).map(OperationCut::leaves);
        return left
                .map(value -> Math.abs(value.inside()))
                .filter(amount -> amount > 0)
                .map(amount ->
                        Contributor.bias(NAME, amount, SPRING).halvedBy("a lighter last pass, or one without infeed"))
                .stream()
                .toList();
    }
}
