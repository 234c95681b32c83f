package setwright.plan.place;

import java.util.List;
import setwright.plan.NotChecked;

/** The error budget of every feature that has a tolerance of place. */
public record PlacePlan(List<FeatureBudget> budgets, List<NotChecked> notChecked) {
    public PlacePlan {
        budgets = List.copyOf(budgets);
        notChecked = List.copyOf(notChecked);
    }
}
