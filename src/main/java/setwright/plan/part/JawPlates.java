package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.shop.OtherJaws;
import setwright.shop.ShopRow;
import setwright.shop.VeeJaws;
import setwright.shop.Vise;

/**
 * The plates of a vise's jaws: its own, or others that are screwed on; mm.
 *
 * @param cut how deep below their top soft ones are cut; nought: as they came
 * @param vee the row of jaws with a vee
 */
public record JawPlates(double height, double thickness, boolean soft, double cut, Optional<VeeJaws> vee) {
    public static JawPlates of(DrawnVise holding, Vise vise, Rows rows) {
        JawPlates own = own(vise);
        boolean uncut = holding.jawCut().value() == ViseHolding.JawCut.UNCUT;
        return rows.row(holding.jaws().value(), OtherJaws.class)
                .map(row -> {
                    boolean soft = row.kind() == ShopRow.Kind.SOFT_JAWS;
                    double depth =
                            uncut || !soft ? 0 : holding.jawCutDepth().value().inside();
                    return new JawPlates(
                            row.height().inside(),
                            row.thickness().inside(),
                            soft,
                            Math.max(0, Math.min(depth, row.height().inside())),
                            Optional.of(row).filter(VeeJaws.class::isInstance).map(VeeJaws.class::cast));
                })
                .orElse(own);
    }

    static JawPlates own(Vise vise) {
        return new JawPlates(vise.jawHeight().inside(), vise.jawThickness().inside(), false, 0, Optional.empty());
    }

    /** How far over the vise bed a part stands on the step that is cut into the jaws; nought where none is. */
    public double step() {
        return cut > 0 ? height - cut : 0;
    }

    /** Middles of the jaws of one or more vises, from the middle of the table, from the left. */
    public static List<Double> middles(DrawnVise holding) {
        int vises = Math.max(1, holding.vises().value());
        double apart = holding.apart().value().inside();
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < vises; i++) {
            found.add(vises == 1 ? 0.0 : apart * (i / (vises - 1.0) - 0.5));
        }
        return found;
    }
}
