package setwright.window.model;

import java.util.List;
import setwright.caution.choice.Ranked;
import setwright.quantity.Measure;

/** Puts a ranking into words. */
public final class RankingModel {
    private RankingModel() {}

    /** What is ranked of a line: what else would hold the work, or the cutter of an operation. */
    public static String title(Planned planned, String setUp, String operation) {
        return operation.isEmpty()
                ? "What would hold the work in "
                        + planned.setUp(setUp).map(drawn -> drawn.title()).orElse(setUp)
                : "What would hold the cutter: " + planned.brief(operation);
    }

    public static RankingPage.Item item(Planned planned, Ranked one) {
        Double batch = one.batch();
        String standing = one.now() ? ", now" : "";
        String time =
                batch == null || !one.kept() ? "" : ", " + planned.printing().of(Measure.TIME, batch);
        String dropped = one.kept() ? "" : ", dropped";
        return new RankingPage.Item(
                one.rank(),
                one.rank() + "  " + one.text() + standing + time + dropped,
                one.reasons(),
                !one.kept(),
                one.kept() && !one.now());
    }

    public static List<RankingPage.Item> items(Planned planned, List<Ranked> ranked) {
        return ranked.stream().map(one -> item(planned, one)).toList();
    }
}
