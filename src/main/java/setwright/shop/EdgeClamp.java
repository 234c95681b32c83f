package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Ratio;
import setwright.quantity.Typed;

/**
 * Clamps that press against an edge of the work, sideways and a little down, and stay below its top; a set of one size.
 *
 * @param length from the face that presses to the far end
 * @param toBolt from the face that presses to the bolt
 * @param pressHeight of what presses over the table
 * @param down what they press down for each unit of force sideways
 * @param sideways what they press sideways for each unit of the bolt's force
 */
public record EdgeClamp(
        String id,
        String name,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> height,
        Typed<Length> toBolt,
        Typed<Length> pressHeight,
        Typed<Ratio> sideways,
        Typed<Ratio> down,
        int pieces,
        Kept kept,
        String source)
        implements TableClamp {
    @Override
    public Kind kind() {
        return Kind.EDGE_CLAMP;
    }
}
