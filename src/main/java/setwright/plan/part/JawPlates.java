package setwright.plan.part;

import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.shop.SoftJaws;
import setwright.shop.Vise;

/** The plates of a vise's jaws: its own, or the soft ones that are screwed on; mm. */
public record JawPlates(double height, double thickness, boolean soft) {
    public static JawPlates of(DrawnVise holding, Vise vise, Rows rows) {
        JawPlates own = own(vise);
        return holding.jaws() == null
                ? own
                : rows.row(holding.jaws(), SoftJaws.class)
                        .map(row -> new JawPlates(
                                row.height().inside(), row.thickness().inside(), true))
                        .orElse(own);
    }

    static JawPlates own(Vise vise) {
        return new JawPlates(vise.jawHeight().inside(), vise.jawThickness().inside(), false);
    }
}
