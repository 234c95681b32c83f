package setwright.command;

import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SecondOpinion;
import setwright.quantity.Band;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

/** Figures that another published way gives otherwise by so much that both ends count. */
record OpinionTable(Plan plan, DrawnSetUp setUp) {
    private static final Printing PRINTING = new Printing(UnitSystem.METRIC);

    String text(String indent) {
        List<OperationCut> cuts = setUp.operations().stream()
                .flatMap(operation -> plan.cut().operation(operation.id()).stream())
                .filter(cut -> cut.opinions().stream().anyMatch(SecondOpinion::apart))
                .toList();
        if (cuts.isEmpty()) {
            return "";
        }
        TextTable table = new TextTable("op", "~figure", ">plan", ">other way", ">apart", ">between", ">and");
        cuts.forEach(cut ->
                cut.opinions().stream().filter(SecondOpinion::apart).forEach(opinion -> table.row(row(cut, opinion))));
        return "\n" + table.text(indent)
                + Wrapped.behind(
                        indent,
                        "plan: by the rule that the plan goes by; other way: by kc, a sharp edge, the chisel edge left out;"
                                + " more than 20 % apart, so that the figure lies between the two.");
    }

    private static List<String> row(OperationCut cut, SecondOpinion opinion) {
        Band band = opinion.band();
        return List.of(
                cut.operation(),
                opinion.ours().name() + " " + opinion.ours().unit().symbol(),
                number(opinion, opinion.ours().inside()),
                number(opinion, opinion.other().inside()),
                Math.round(100 * opinion.difference()) + " %",
                number(opinion, band.low()),
                number(opinion, band.high()));
    }

    private static String number(SecondOpinion opinion, double inside) {
        return PRINTING.number(opinion.ours().unit(), inside);
    }
}
