package setwright.holding;

import setwright.quantity.Source;

/** From which hold factor on a grip is trusted; a shop may set its own. */
public record GripLimits(
        double stopExpected, double stopPessimistic, double cautionExpected, double cautionPessimistic) {
    /** The asked factor is for the expected value; the pessimistic one is not asked a margin again. */
    public static final GripLimits USUAL = new GripLimits(1.3, 0.8, 2, 1);

    /** Where {@link #USUAL} comes from. */
    public static final Source SOURCE = Source.of("common practice");

    public GripLimits {
        if (cautionExpected < stopExpected || cautionPessimistic < stopPessimistic) {
            throw new IllegalArgumentException("A caution is raised at or above the factor of a stop; asked were "
                    + cautionExpected + " over " + stopExpected + " and " + cautionPessimistic + " over "
                    + stopPessimistic + ".");
        }
    }
}
