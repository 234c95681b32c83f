package setwright.location.angle;

import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * One tilt that stands for angles in two planes square to each other; radians.
 *
 * @param turn about the upright, from the plane of the first angle
 * @param tilt about the line so found
 */
public record CompoundAngle(double turn, double tilt) {
    private static final String HANDBOOK = "Machinery's Handbook 31st ed. p.121 (compound angles)";

    public static final Procedure PLATE = procedure("tan R = tan B / tan A, tan C = tan A / cos R", "fig. 4");
    public static final Procedure CORNER = procedure("tan R = tan A / tan B, tan C = tan A cos R", "fig. 5");
    public static final Procedure HOLE = procedure("tan R = tan A / tan B, tan C = tan B / cos R", "fig. 6");

    private static Procedure procedure(String step, String figure) {
        return new Procedure("compound angle", List.of(step), Unit.DEG, Source.of(HANDBOOK + ", " + figure));
    }

    /** A plate that shows angle A in one view and B in the other, as tilts of its face. */
    public static CompoundAngle plate(double a, double b) {
        double x = StrictMath.tan(a);
        double y = StrictMath.tan(b);
        return new CompoundAngle(StrictMath.atan2(y, x), StrictMath.atan(StrictMath.hypot(x, y)));
    }

    /** The line in which two faces meet that lean by A and B from the same floor. */
    public static CompoundAngle corner(double a, double b) {
        double x = StrictMath.tan(a);
        double turn = StrictMath.atan2(x, StrictMath.tan(b));
        double rise = a == 0 || b == 0 ? 0 : x * StrictMath.cos(turn);
        return new CompoundAngle(turn, StrictMath.atan(rise));
    }

    /** A hole that leans by A in one view and by B in the other. */
    public static CompoundAngle hole(double a, double b) {
        double x = StrictMath.tan(a);
        double y = StrictMath.tan(b);
        return new CompoundAngle(StrictMath.atan2(x, y), StrictMath.atan(StrictMath.hypot(x, y)));
    }
}
