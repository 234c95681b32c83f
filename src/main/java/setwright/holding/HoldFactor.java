package setwright.holding;

import setwright.holding.balance.Answer;

/** How many times the cutting load the grip bears, as it usually is and on a bad day. */
public record HoldFactor(double expected, double pessimistic) {
    public static HoldFactor of(Answer expected, Answer pessimistic) {
        return new HoldFactor(expected.factor(), pessimistic.factor());
    }
}
