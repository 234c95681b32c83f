package setwright.command;

import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

/** What the passes of a set-up leave of the surfaces that they cut. */
record LeavesTable(Plan plan, DrawnSetUp setUp, Printing printing) {

    String text(String indent) {
        List<OperationCut> cuts = setUp.operations().stream()
                .flatMap(operation -> plan.cut().operation(operation.id()).stream())
                .filter(cut -> !cut.surfaces().isEmpty())
                .toList();
        if (cuts.isEmpty()) {
            return "";
        }
        TextTable table = new TextTable("op", "~surface", ">left", ">between", ">and", ">at top", ">at foot");
        cuts.forEach(cut -> cut.surfaces().forEach(left -> table.row(row(cut, left))));
        return "\n" + table.text(indent)
                + Wrapped.behind(
                        indent,
                        "left: how far the tool leaves the surface out, "
                                + Measure.SMALL_LENGTH.unit(printing.units()).symbol()
                                + ", above nought metal stays on, below it the cutter went in; between, and: with the"
                                + " stiff and the soft ends of all springs.");
    }

    private List<String> row(OperationCut cut, SurfaceLeft left) {
        return List.of(
                cut.operation(),
                left.surface().words(),
                number(left.inside()),
                number(left.band().low()),
                number(left.band().high()),
                number(left.atTop()),
                number(left.atBottom()));
    }

    private String number(double mm) {
        String printed = printing.of(Measure.SMALL_LENGTH, mm, printing.units() == UnitSystem.INCH ? 2 : 1);
        return printed.substring(0, printed.indexOf(' '));
    }
}
