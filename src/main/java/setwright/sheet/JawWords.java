package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.shop.VeeJaws;

/** What is not plain about the jaws of a vise, in words. */
public record JawWords(DrawnVise holding) {
    /** What the part rests on where there are no parallels: {@code on the vise bed}. */
    public String seat(Rows rows) {
        if (rows.row(holding.jaws().value(), VeeJaws.class).isPresent()) {
            return "in the vee of the jaws";
        }
        return holding.jawCut().value() == ViseHolding.JawCut.UNCUT ? "on the vise bed" : "on the step of the jaws";
    }

    /** {@code round bar at the moving jaw}, {@code jaws cut to a step of 10 mm}, {@code 2 vises, 335 mm apart}. */
    public List<String> said() {
        List<String> said = new ArrayList<>();
        if (holding.vises().value() > 1) {
            said.add(holding.vises().value() + " vises, "
                    + holding.apart().value().text() + " apart");
        }
        if (holding.jawCut().value() != ViseHolding.JawCut.UNCUT) {
            boolean step = holding.jawCut().value() == ViseHolding.JawCut.STEP;
            said.add("jaws cut to " + (step ? "a step" : "the part's outline") + ", "
                    + holding.jawCutDepth().value().text() + " deep");
        }
        switch (holding.between().value()) {
            case NOTHING -> {}
            case ROUND_BAR -> said.add("round bar at the moving jaw");
            case SOFT_STRIP -> said.add("soft strip at the moving jaw");
            case PAPER -> said.add("paper at both jaws");
        }
        return said;
    }
}
