package setwright.command;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.caution.choice.Ranked;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.holding.HoldFactor;
import setwright.quantity.Unit;

/** The rankings of a set-up as JSON; times in minutes, of all parts with their set-ups. */
final class SuggestJson {
    private SuggestJson() {}

    static Tree of(Suggested suggested) {
        return Json.object()
                .put("setUp", suggested.setUp().id())
                .put(
                        "holdings",
                        Json.array(suggested.holdings().stream()
                                .map(SuggestJson::holding)
                                .toList()))
                .put(
                        "holders",
                        Json.array(suggested.holders().stream()
                                .map(SuggestJson::operation)
                                .toList()))
                .build();
    }

    private static Tree holding(Ranked one) {
        HoldFactor factor = one.holdFactor();
        return Json.object()
                .put("rank", one.rank())
                .put("holding", one.id())
                .put("text", one.text())
                .put("kept", one.kept())
                .put("reasons", Json.texts(one.reasons()))
                .put("holdFactor", OperationJson.holdFactor(factor == null ? List.of() : List.of(factor)))
                .put("time", minutes(one.batch()))
                .build();
    }

    private static Tree operation(Suggested.OfOperation of) {
        return Json.object()
                .put("operation", of.operation().id())
                .put(
                        "ranked",
                        Json.array(of.ranked().stream().map(SuggestJson::holder).toList()))
                .build();
    }

    private static Tree holder(Ranked one) {
        return Json.object()
                .put("rank", one.rank())
                .put("holder", one.id())
                .put("kept", one.kept())
                .put("reasons", Json.texts(one.reasons()))
                .build();
    }

    private static @Nullable Double minutes(@Nullable Double seconds) {
        return seconds == null ? null : OperationJson.finite(Unit.MINUTE.fromInside(seconds));
    }
}
