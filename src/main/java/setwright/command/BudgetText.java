package setwright.command;

import setwright.plan.place.Aspect;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

/** One error budget as text: the sums against the tolerance, then what they are made of. */
record BudgetText(FeatureBudget budget, Printing printing) {
    String text() {
        StringBuilder text = new StringBuilder(Wrapped.behind("  " + budget.what() + "  ", sums()));
        TextTable table = new TextTable("", ">", "~");
        budget.contributions()
                .forEach(one ->
                        table.row(one.name() + (one.known() ? ", always" : ""), fine(one.halfWidth()), one.source()));
        table.text("    ").lines().skip(1).forEach(line -> text.append(line).append("\n"));
        return text.toString();
    }

    private String sums() {
        boolean place = budget.aspect() == Aspect.PLACE;
        String opinion = budget.opinion().isEmpty() ? "" : " " + budget.opinion() + ".";
        return "may be " + fine(budget.limit()) + (place ? " from its true place" : " out") + "; the errors of "
                + budget.operation() + " add up to " + fine(budget.worstCase().inside()) + " at worst, "
                + fine(budget.rss().inside()) + " root sum square" + verdict() + opinion;
    }

    private String verdict() {
        String most = " Most is " + budget.largest()
                + (budget.halvedBy().isEmpty() ? "" : ", halved by " + budget.halvedBy()) + ".";
        if (budget.worstCase().inside() <= budget.limit()) {
            return "." + most;
        }
        return budget.decisive() <= budget.limit()
                ? ": at worst more than the drawing allows." + most
                : ": more than the drawing allows." + most;
    }

    private String fine(double mm) {
        return printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.INCH ? 4 : 3);
    }
}
