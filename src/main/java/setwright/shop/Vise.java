package setwright.shop;

import setwright.quantity.Force;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Typed;

/**
 * A milling vise. Heights are from the table to the bed, and from the bed to the jaw top.
 *
 * @param openingInboard largest work between the jaws on their inner seats
 * @param openingOutboard largest work between the jaws moved to their outer seats
 * @param jawThickness of one jaw plate, across
 * @param bodyLength overall, across the jaws
 * @param snug grip of a light pull on the handle
 * @param firm grip of a usual pull
 * @param hard grip of a hard pull; never more is offered
 */
public record Vise(
        String id,
        String name,
        Typed<Length> jawWidth,
        Typed<Length> jawHeight,
        Typed<Length> jawThickness,
        Typed<Length> bedHeight,
        Typed<Length> openingInboard,
        Typed<Length> openingOutboard,
        Typed<Length> bodyLength,
        JawFace jawFace,
        Typed<Force> snug,
        Typed<Force> firm,
        Typed<Force> hard,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {

    /** The surface of the jaws; decides friction and marks. */
    public enum JawFace {
        SMOOTH,
        GROOVED,
        SERRATED
    }

    @Override
    public Kind kind() {
        return Kind.VISE;
    }
}
