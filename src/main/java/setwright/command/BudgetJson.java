package setwright.command;

import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.plan.place.FeatureBudget;

/** One error budget as JSON, lengths in millimetres. */
final class BudgetJson {
    private BudgetJson() {}

    static Tree tree(FeatureBudget budget) {
        return Json.object()
                .put("feature", budget.feature())
                .put("of", budget.aspect().words())
                .put("to", budget.to().isEmpty() ? null : budget.to())
                .put("setUp", budget.setUp())
                .put("operation", budget.operation())
                .put("tolerance", budget.limit())
                .put("rss", budget.rss().inside())
                .put("worst", budget.worstCase().inside())
                .put("counts", budget.decisive())
                .put("largest", budget.largest())
                .put("halvedBy", budget.halvedBy().isEmpty() ? null : budget.halvedBy())
                .put("opinion", budget.opinion().isEmpty() ? null : budget.opinion())
                .put(
                        "contributors",
                        Json.array(budget.contributions().stream()
                                .map(BudgetJson::contribution)
                                .toList()))
                .build();
    }

    private static Tree contribution(FeatureBudget.Contribution one) {
        return Json.object()
                .put("name", one.name())
                .put("halfWidth", one.halfWidth())
                .put("known", one.known())
                .put("source", one.source())
                .build();
    }
}
