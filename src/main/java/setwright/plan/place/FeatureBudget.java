package setwright.plan.place;

import java.util.List;
import setwright.quantity.Value;

/**
 * Where a feature may come out.
 *
 * @param limit what the drawing allows from the true place, mm (half of a position zone's diameter)
 * @param worstCase every error at its end, one way, worked
 * @param rss root-sum-square, worked
 * @param decisive the sum that counts against the limit: the worst case where one contributor has over 60 % of the squares
 * @param largest the contributor that counts most
 */
public record FeatureBudget(
        String setUp,
        String feature,
        String operation,
        double limit,
        Value worstCase,
        Value rss,
        double decisive,
        String largest,
        List<Contribution> contributions) {
    public FeatureBudget {
        contributions = List.copyOf(contributions);
    }

    /** One error between datum and feature, mm either way, with its source. */
    public record Contribution(String name, double halfWidth, String source) {}
}
