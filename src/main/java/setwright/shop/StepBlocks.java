package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Pairs of step blocks that mesh; a set counts as one.
 *
 * @param least lowest heel that a pair gives
 * @param greatest highest heel that a pair gives
 */
public record StepBlocks(
        String id,
        String name,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Length> step,
        Typed<Length> width,
        int pieces,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.STEP_BLOCKS;
    }
}
