package setwright.shop;

import setwright.quantity.Force;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Typed;

/**
 * A chuck that holds work on a rotary table or dividing head.
 *
 * @param jaws how many
 * @param diameter of its body
 * @param height of body and jaws over what it is bolted to
 * @param jawDepth how far the jaws reach along the work
 * @param least smallest round that it grips from outside
 * @param greatest largest round that it grips from outside
 * @param gripLow what all jaws press with together on a bad day
 * @param grip what they usually press with
 */
public record WorkChuck(
        String id,
        String name,
        int jaws,
        Typed<Length> diameter,
        Typed<Length> height,
        Typed<Length> jawDepth,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Force> gripLow,
        Typed<Force> grip,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.WORK_CHUCK;
    }
}
