package setwright.holding;

import setwright.shop.Vise;

/** The jaws of a vise: how wide they are (mm), where the solid one stands, and how they rub. */
public record Jaws(double width, Solid solid, Friction friction) {
    /** Where the solid jaw stands as one looks at the machine. */
    public enum Solid {
        BACK,
        FRONT
    }

    public Jaws {
        if (!(width > 0)) {
            throw new IllegalArgumentException("Jaws are wider than nothing, not " + width + " mm.");
        }
    }

    /** The jaws of a shop's vise, the solid one at the back. */
    public static Jaws of(Vise vise, Friction friction) {
        return new Jaws(vise.jawWidth().inside(), Solid.BACK, friction);
    }

    /** Smooth hardened jaws, the solid one at the back. */
    public static Jaws smooth(double width) {
        return new Jaws(width, Solid.BACK, Friction.SMOOTH_HARDENED_JAW);
    }
}
