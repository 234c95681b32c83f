package setwright.rigidity.stability;

import setwright.cutting.Engagement;

/**
 * The mean directional factors of a milling cut, x along the feed and y normal to it: what a shift of the tip along the
 * second letter does to the force along the first, over a turn (Altintas and Budak).
 */
public record DirectionalFactors(double xx, double xy, double yx, double yy) {
    public static DirectionalFactors of(Engagement arc, double radialRatio) {
        double cos = StrictMath.cos(2 * arc.exit()) - StrictMath.cos(2 * arc.start());
        double sin = StrictMath.sin(2 * arc.exit()) - StrictMath.sin(2 * arc.start());
        double turned = 2 * arc.arc();
        return new DirectionalFactors(
                (cos - radialRatio * turned + radialRatio * sin) / 2,
                (-sin - turned + radialRatio * cos) / 2,
                (-sin + turned + radialRatio * cos) / 2,
                (-cos - radialRatio * turned - radialRatio * sin) / 2);
    }

    public double determinant() {
        return xx * yy - xy * yx;
    }
}
