package setwright.holding;

/** What a hold factor means: nothing is said, a caution, or do not run. */
public enum GripVerdict {
    HOLDS,
    CAUTION,
    STOP;

    public static GripVerdict of(HoldFactor factor) {
        return of(factor, GripLimits.USUAL);
    }

    public static GripVerdict of(HoldFactor factor, GripLimits limits) {
        if (factor.expected() < limits.stopExpected() || factor.pessimistic() < limits.stopPessimistic()) {
            return STOP;
        }
        if (factor.expected() < limits.cautionExpected() || factor.pessimistic() < limits.cautionPessimistic()) {
            return CAUTION;
        }
        return HOLDS;
    }
}
