package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A twist drill.
 *
 * @param pointAngle included angle of the point
 * @param series jobber, stub, taper shank, reduced shank or core drill
 */
public record Drill(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> pointAngle,
        Series series,
        Kept kept,
        String source)
        implements Cutter {

    /** Whether it makes a hole where there is none. */
    public boolean cutsInTheFull() {
        return series != Series.CORE;
    }

    @Override
    public double tipAngle() {
        return pointAngle.inside();
    }

    @Override
    public Form form() {
        return Form.DRILL;
    }

    /** The length series of twist drills. */
    public enum Series {
        JOBBER,
        STUB,
        TAPER_SHANK,
        REDUCED_SHANK,
        /** Three or four flutes and no point: it opens a hole that is there. */
        CORE
    }
}
