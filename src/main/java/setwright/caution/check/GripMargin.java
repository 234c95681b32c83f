package setwright.caution.check;

import java.util.Comparator;
import setwright.caution.Figure;
import setwright.holding.GripLimits;
import setwright.holding.GripVerdict;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Band;
import setwright.quantity.Unit;

/** The two hold factors of an operation against what is asked of each, and the one of them that decides. */
record GripMargin(OperationHold hold, GripVerdict verdict) {
    /** The one held least first. */
    static final Comparator<GripMargin> LEAST_FIRST =
            Comparator.comparing(GripMargin::verdict).reversed().thenComparingDouble(GripMargin::share);

    private static final GripLimits LIMITS = GripLimits.USUAL;

    static GripMargin of(OperationHold hold) {
        return new GripMargin(hold, GripVerdict.of(hold.factor(), LIMITS));
    }

    /** Asked of the factor as it usually is; nothing is said from there on. */
    double askedUsually() {
        return LIMITS.cautionExpected();
    }

    /** Asked of the factor on a bad day. */
    double askedOnABadDay() {
        return LIMITS.cautionPessimistic();
    }

    /** The factor that decides, with what is asked of it. */
    Figure deciding() {
        return shareOnABadDay() < shareUsually()
                ? Figure.atLeast(askedOnABadDay(), hold.factor().pessimistic(), Unit.NONE)
                : Figure.atLeast(askedUsually(), hold.factor().expected(), Unit.NONE);
    }

    /** From a bad day to the usual one. */
    Band band() {
        double usual = hold.factor().expected();
        return new Band(Math.min(hold.factor().pessimistic(), usual), usual, usual);
    }

    private double share() {
        return Math.min(shareUsually(), shareOnABadDay());
    }

    /** Of the limit that the verdict was given by. */
    private double shareUsually() {
        double limit = verdict == GripVerdict.STOP ? LIMITS.stopExpected() : LIMITS.cautionExpected();
        return hold.factor().expected() / limit;
    }

    private double shareOnABadDay() {
        double limit = verdict == GripVerdict.STOP ? LIMITS.stopPessimistic() : LIMITS.cautionPessimistic();
        return hold.factor().pessimistic() / limit;
    }
}
