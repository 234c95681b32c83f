package setwright.command;

import java.util.List;
import java.util.Locale;
import setwright.caution.choice.Ranked;
import setwright.job.JobPlan;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.shop.ShopRow;

/** The rankings of a set-up as text. */
final class SuggestText {
    private final Suggested suggested;
    private final Printing printing;
    private final boolean whole;

    /** @param whole whether what does not suit at all is listed too */
    SuggestText(Suggested suggested, Printing printing, boolean whole) {
        this.suggested = suggested;
        this.printing = printing;
        this.whole = whole;
    }

    String text() {
        JobPlan job = suggested.plan().job().plan();
        StringBuilder text = new StringBuilder(Wrapped.behind(
                "",
                job.title().part() + ", set-up " + suggested.setUp().id() + ": "
                        + suggested.setUp().title() + ", " + job.numberOff() + " off"));
        text.append("\nHolding, the best first\n");
        text.append(ranked(suggested.holdings(), suggested.setUp().id()));
        suggested.holders().forEach(of -> text.append(holders(of)));
        return text.toString();
    }

    private String holders(Suggested.OfOperation of) {
        String cutter = suggested
                .plan()
                .rows()
                .shop()
                .row(of.operation().cutter().value())
                .map(ShopRow::name)
                .orElse("its cutter");
        return "\n"
                + Wrapped.behind(
                        "",
                        "Holder for " + cutter + " (" + suggested.setUp().id() + "/"
                                + of.operation().id() + "), the best first")
                + ranked(of.ranked(), of.operation().id());
    }

    private String ranked(List<Ranked> all, String of) {
        StringBuilder text = new StringBuilder();
        all.stream().filter(Ranked::kept).forEach(one -> text.append(one(one, of)));
        List<Ranked> dropped = all.stream().filter(one -> !one.kept()).toList();
        if (!dropped.isEmpty()) {
            text.append("  Dropped\n");
        }
        long unsuited = dropped.stream().filter(one -> one.batch() == null).count();
        dropped.stream().filter(one -> whole || one.batch() != null).forEach(one -> text.append(one(one, of)));
        if (!whole && unsuited > 0) {
            text.append("       ").append(unsuited).append(" more do not suit it at all; --all lists them\n");
        }
        return text.toString();
    }

    private String one(Ranked one, String of) {
        String because = suggested.plan().job().plan().because(of);
        Double batch = one.batch();
        String head = one.text()
                + (one.now() ? because.isEmpty() ? " (now)" : " (now, because " + because + ")" : "")
                + (batch == null || !one.kept() ? "" : ", " + printing.of(Measure.TIME, batch));
        StringBuilder text = new StringBuilder(Wrapped.behind(String.format(Locale.ROOT, "  %3d  ", one.rank()), head));
        one.reasons().forEach(reason -> text.append(Wrapped.behind("       - ", reason)));
        return text.toString();
    }
}
