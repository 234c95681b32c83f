package setwright.cutting;

/**
 * The force at one moment of a turn.
 *
 * @param angle at which the tip of a tooth stands, from +y in the sense of rotation, rad
 */
public record TurnPoint(double angle, CutForce force) {}
