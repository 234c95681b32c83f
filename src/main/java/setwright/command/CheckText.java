package setwright.command;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.caution.Severity;
import setwright.job.Blank;
import setwright.job.Block;
import setwright.job.DrawnSetUp;
import setwright.job.InWords;
import setwright.job.JobPlan;
import setwright.job.Size;
import setwright.job.Title;
import setwright.plan.Plan;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.shop.ShopRow;

/** The check of one job as text: the plan with its working, its cautions, and what was not checked. */
final class CheckText {
    private final JobCheck.Worked check;
    private final Severity least;
    private final Plan plan;
    private final Printing printing;

    /** @param units to print in; null: as the job has them */
    CheckText(JobCheck.Worked check, Severity least, @Nullable UnitSystem units) {
        this.check = check;
        this.least = least;
        plan = check.plan();
        printing = new Printing(units == null ? plan.job().plan().units() : units);
    }

    String text() {
        StringBuilder text = new StringBuilder(title());
        text.append("\n").append(Wrapped.behind("", Head.of(check.findings())));
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            text.append("\n").append(new SetUpText(check, setUp, printing).text());
        }
        text.append("\n").append(times());
        text.append(budgets());
        text.append(new WorkedExample(plan, printing).text());
        text.append(new CautionText(check, least, printing).text());
        return text.toString();
    }

    private String title() {
        JobPlan job = plan.job().plan();
        Title title = job.title();
        String drawing = title.drawing().isEmpty()
                ? ""
                : ", drawing " + title.drawing() + (title.revision().isEmpty() ? "" : " revision " + title.revision());
        return Wrapped.behind("", title.part() + drawing + ", " + job.numberOff() + " off")
                + Wrapped.behind("  Blank    ", row(job.material()) + ", " + blank())
                + Wrapped.behind("  Machine  ", machine());
    }

    private String blank() {
        Blank blank = plan.job().plan().blank();
        Block box = blank.envelope();
        return InWords.word(blank.kind()) + " " + sizes(List.of(box.length(), box.depth(), box.height()));
    }

    /** Nominal sizes, and the limits where there are any. */
    private String sizes(List<Size> sizes) {
        String nominal = joined(
                sizes.stream().map(size -> number(size.nominal().inside())).toList());
        boolean loose = sizes.stream().anyMatch(size -> size.greatestMm() > size.leastMm());
        String limits = loose
                ? ", each within "
                        + joined(sizes.stream()
                                .map(size -> number(size.leastMm()) + " to " + number(size.greatestMm()))
                                .toList())
                : "";
        return nominal + " " + unit() + limits;
    }

    private static String joined(List<String> parts) {
        return String.join(" x ", parts);
    }

    private String number(double mm) {
        return printing.number(Measure.LENGTH, mm);
    }

    private String unit() {
        return Measure.LENGTH.unit(printing.units()).symbol();
    }

    private String machine() {
        List<String> standing = plan.job().plan().machine().clockedIn();
        return plan.rows().machine().name()
                + (standing.isEmpty()
                        ? ", nothing clocked in"
                        : "; clocked in: "
                                + String.join(
                                        ", ", standing.stream().map(this::row).toList()));
    }

    private String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse(id);
    }

    private String times() {
        var time = plan.time();
        int parts = plan.job().plan().numberOff();
        return "Times\n"
                + "  set-up " + minutes(time.setUp()) + ", each part " + minutes(time.each()) + ", batch of " + parts
                + " "
                + minutes(time.batch()) + "\n";
    }

    private static String minutes(double seconds) {
        return new Printing(UnitSystem.METRIC).of(Measure.TIME, seconds);
    }

    private String budgets() {
        List<FeatureBudget> budgets = plan.place().budgets();
        if (budgets.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder("\nError budget\n");
        budgets.forEach(budget -> text.append(new BudgetText(budget, printing).text()));
        return text.toString();
    }
}
