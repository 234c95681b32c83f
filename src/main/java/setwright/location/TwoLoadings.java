package setwright.location;

import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Two holes drilled in two loadings of one part; millimetres. */
public final class TwoLoadings {
    public static final Procedure ERROR = new Procedure(
            "error between two loadings",
            List.of(
                    "in each loading finding the edges and re-loading the part, along both axes",
                    "both loadings by root sum square"),
            Unit.MM,
            Source.of("common practice"));

    private TwoLoadings() {}

    /** How far a hole of the second loading comes to lie from where one of the first expects it. */
    public static double error(HoleErrors errors) {
        return error(errors, errors);
    }

    /** The same with two loadings that are not found alike. */
    public static double error(HoleErrors first, HoleErrors second) {
        return StrictMath.sqrt(2 * (squares(first) + squares(second)));
    }

    private static double squares(HoleErrors errors) {
        return errors.edgeFinding() * errors.edgeFinding() + errors.reclamp() * errors.reclamp();
    }
}
