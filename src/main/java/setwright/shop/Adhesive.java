package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Stress;
import setwright.quantity.Typed;

/**
 * Double-sided tape, or glue that lets go again.
 *
 * @param form tape or glue
 * @param shearLow what a square millimetre bears along the face on a bad day
 * @param shear what it usually bears along the face
 * @param pullLow what it bears straight off the face on a bad day, the load spread evenly
 * @param pull what it usually bears straight off the face
 * @param thickness of tape and film
 */
public record Adhesive(
        String id,
        String name,
        Form form,
        Typed<Stress> shearLow,
        Typed<Stress> shear,
        Typed<Stress> pullLow,
        Typed<Stress> pull,
        Typed<Length> thickness,
        Kept kept,
        String source)
        implements Owned {
    /** What it is. */
    public enum Form {
        TAPE,
        GLUE
    }

    @Override
    public Kind kind() {
        return Kind.ADHESIVE;
    }
}
