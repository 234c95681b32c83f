package setwright.caution.check;

import setwright.quantity.Band;

/** Bands without their sign, as limits are compared. */
final class SizeOf {
    private SizeOf() {}

    /** The band of the amount, whichever way it goes. */
    static Band band(Band signed) {
        double expected = Math.abs(signed.expected());
        double one = Math.abs(signed.low());
        double other = Math.abs(signed.high());
        return new Band(Math.min(expected, Math.min(one, other)), expected, Math.max(expected, Math.max(one, other)));
    }
}
