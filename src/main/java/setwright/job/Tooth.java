package setwright.job;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The tooth of a gear.
 *
 * @param module pitch diameter over teeth; of P teeth an inch it is written {@code 1/24 in}
 */
public record Tooth(Typed<Length> module, Typed<Angle> pressureAngle) {
    private static final double INCH = 25.4;

    /** Teeth to an inch of pitch diameter where the module was written in inches; 0 for a module gear. */
    public double diametralPitch() {
        return module.text().contains("in") || module.text().contains("\"") ? INCH / module.inside() : 0;
    }
}
