package setwright.job;

import setwright.quantity.Angle;
import setwright.quantity.Typed;

/**
 * How far the part is tilted after its side is up and it was turned.
 *
 * @param about the table's axis that it is tilted about
 * @param angle anticlockwise as one looks against that axis
 * @param by what gives the angle
 */
public record Tilt(Axis about, Typed<Angle> angle, By by) {
    /** The axis of the table. */
    public enum Axis {
        X,
        Y
    }

    /** What gives the angle. */
    public enum By {
        ANGLE_BLOCKS,
        SINE_BAR,
        PROTRACTOR,
        ANGLE_PLATE,
        SCRIBED_LINE,
        HEAD
    }
}
