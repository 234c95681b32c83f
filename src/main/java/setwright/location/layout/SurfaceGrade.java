package setwright.location.layout;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** How flat a plate of a grade is, by its longer side. */
public enum SurfaceGrade {
    GRADE_0(4, 250),
    GRADE_I(10, 100),
    GRADE_II(20, 50),
    GRADE_III(40, 25);

    public static final Formula FLATNESS = new Formula(
            "t = (a + L / b) / 1000",
            symbol("t", "flatness", Unit.MM, 0, 1),
            List.of(
                    symbol("a", "fixed part, thousandths", Unit.NONE, 4, 40),
                    symbol("L", "longer side", Unit.MM, 100, 2000),
                    symbol("b", "mm for each thousandth more", Unit.NONE, 25, 250)),
            v -> (v[0] + v[1] / v[2]) / 1000,
            Source.of("DIN 876 flatness of plates, formulas by grade"));

    private final double fixed;
    private final double millimetresEach;

    SurfaceGrade(double fixed, double millimetresEach) {
        this.fixed = fixed;
        this.millimetresEach = millimetresEach;
    }

    /** mm. */
    public double flatness(double length) {
        return (fixed + length / millimetresEach) / 1000;
    }
}
