package setwright.holding.balance;

/**
 * A force and a moment on the part: a cut, or its own weight.
 *
 * @param name what it is, for instance {@code o3, at the far end}; may be empty
 * @param at where the force acts, mm
 * @param force N
 * @param moment on top of that of the force, N·mm
 */
public record Load(String name, Vector at, Vector force, Vector moment) {
    public static final Load NONE = new Load("no load", Vector.ZERO, Vector.ZERO, Vector.ZERO);

    public static Load force(String name, Vector at, Vector force) {
        return new Load(name, at, force, Vector.ZERO);
    }

    /** The weight of a part of that many newtons whose centre of mass is there. */
    public static Load weight(double newtons, Vector centre) {
        return force("own weight", centre, Vector.UP.times(-newtons));
    }

    public Load times(double factor) {
        return new Load(name, at, force.times(factor), moment.times(factor));
    }

    /** The whole moment about a point, N·mm. */
    Vector about(Vector point) {
        return at.minus(point).cross(force).plus(moment);
    }
}
