package setwright.plan.cut;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import setwright.cutting.LimitName;

/**
 * The largest choice that keeps every limit which grows with it. A limit that the choice does not touch is no reason to
 * take less of it.
 *
 * @param used shares of the limits at a choice
 * @param share of each limit that may be used
 */
record LimitSearch(DoubleFunction<Map<LimitName, Double>> used, double share) {
    private static final int CLOSER = 24;
    private static final double NEAR = 1e-4;

    /** Bounds are looked at so far below the largest choice, in ratio to it. */
    private static final double LEAST = 1.0 / 64;

    /**
     * What was found.
     *
     * @param stoppedBy the limit that is met first; null where all are kept at the largest choice
     */
    record Found(double value, @Nullable LimitName stoppedBy) {}

    /** Up to a largest choice; a share of it where even that is too much. */
    Found upTo(double most) {
        Map<LimitName, Double> above = used.apply(most);
        Map<LimitName, Double> over = new EnumMap<>(LimitName.class);
        above.forEach((limit, share) -> {
            if (share > this.share) {
                over.put(limit, share);
            }
        });
        if (over.isEmpty()) {
            return new Found(most, null);
        }
        double least = LEAST * most;
        Map<LimitName, Double> below = used.apply(least);
        over.entrySet().removeIf(limit -> below.getOrDefault(limit.getKey(), 0.0) >= limit.getValue() * (1 - NEAR));
        return over.isEmpty() ? new Found(most, null) : between(least, most, over);
    }

    /** Shares follow powers of the choice nearly enough: a straight line in logarithms, drawn closer each time. */
    private Found between(double least, double most, Map<LimitName, Double> over) {
        double low = least;
        double high = most;
        LimitName stop = worst(over, over);
        Map<LimitName, Double> lowest = used.apply(low);
        double atLow = over(lowest, worst(lowest, over));
        double atHigh = over(over, stop);
        for (int i = 0; i < CLOSER && atLow < 0 && high / low > 1 + NEAR; i++) {
            double part = Math.min(0.98, Math.max(0.02, atLow / (atLow - atHigh)));
            double choice = low * StrictMath.pow(high / low, part);
            Map<LimitName, Double> there = used.apply(choice);
            LimitName worst = worst(there, over);
            double at = over(there, worst);
            if (Math.abs(at) < NEAR) {
                return new Found(choice, worst);
            }
            if (at > 0) {
                high = choice;
                atHigh = at;
                stop = worst;
            } else {
                low = choice;
                atLow = at;
            }
        }
        return new Found(low, stop);
    }

    private double over(Map<LimitName, Double> shares, LimitName limit) {
        return StrictMath.log(Math.max(1e-9, shares.getOrDefault(limit, 0.0)) / share);
    }

    private static LimitName worst(Map<LimitName, Double> shares, Map<LimitName, Double> among) {
        return among.keySet().stream()
                .max((one, other) -> Double.compare(shares.getOrDefault(one, 0.0), shares.getOrDefault(other, 0.0)))
                .orElseThrow();
    }
}
