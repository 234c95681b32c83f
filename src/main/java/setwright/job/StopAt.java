package setwright.job;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A stop against a side of the part as it lies on the table.
 *
 * @param stop id of the stop's row; {@link ViseHolding#NONE} for a plain pin or bar
 * @param side edge of the part as seen from above: low is the front
 * @param along place along that edge, from the left or the front
 */
public record StopAt(String id, String stop, Edge side, Typed<Length> along) {}
