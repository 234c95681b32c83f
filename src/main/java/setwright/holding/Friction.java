package setwright.holding;

import setwright.quantity.Source;
import setwright.shop.FrictionPair;

/** The friction of two faces under a cut: how it usually is, and on a bad day. Shop settings; these are the defaults. */
public record Friction(double expected, double pessimistic, Source source) {
    /** Smooth hardened jaws on machined or sawn work. */
    public static final Friction SMOOTH_HARDENED_JAW = new Friction(
            0.15,
            0.10,
            Source.of(
                    "common practice (smooth oily metal on metal; clamping-head manual p. 28 table 5 gives 0.10 to 0.13"
                            + " finish machined, 0.14 to 0.16 unmachined)"));

    /** Hardened ground parallels, jacks, stops: the middle and the low end of what a smooth hardened face gives. */
    public static final Friction GROUND_PARALLEL = new Friction(
            0.115,
            0.10,
            Source.of("Clamping-head manual p. 28 table 5, https://manualshive.com/en/manual/~/3248048?page=28:"
                    + " steel work on a smooth hardened face, finish to rough machined, 0.10 to 0.13"));

    public Friction {
        if (!(pessimistic >= 0 && expected >= pessimistic && Double.isFinite(expected))) {
            throw new IllegalArgumentException("Friction is 0 or more, and expected at least pessimistic; not "
                    + expected + " and " + pessimistic + ".");
        }
    }

    public static Friction of(FrictionPair pair) {
        return new Friction(pair.expected().inside(), pair.pessimistic().inside(), Source.of(pair.source()));
    }

    public double at(Outlook outlook) {
        return switch (outlook) {
            case EXPECTED -> expected;
            case PESSIMISTIC -> pessimistic;
        };
    }

    /** The same faces with a factor, for instance 0.97 for aluminium alloy. */
    public Friction times(double factor) {
        return new Friction(expected * factor, pessimistic * factor, source);
    }
}
