package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;

/** What is done at the jaws of a vise before the part goes in. */
record JawSteps(Steps.Writer writer, Shown shown) {
    List<Step> all(DrawnVise holding) {
        List<Step> steps = new ArrayList<>();
        if (holding.vises().value() > 1) {
            steps.add(writer.step(
                            "vises",
                            Step.Kind.HOLD,
                            holding.vises().value() + " vises, "
                                    + length(holding.apart().value().inside()) + " apart from the first to the last.")
                    .doing("one test bar in all of them, clocked along X; beds and parallels of one height")
                    .checking("the bar slides in every one before it is closed")
                    .written());
        }
        if (holding.otherJaws()) {
            steps.add(writer.step(
                            "jaws",
                            Step.Kind.HOLD,
                            "Screw on " + row(holding.jaws().value()) + ".")
                    .doing("seats and backs wiped clean, solid jaw clocked again")
                    .checking("screws tight")
                    .written());
        }
        cut(holding, steps);
        between(holding, steps);
        return steps;
    }

    private void cut(DrawnVise holding, List<Step> steps) {
        if (holding.jawCut().value() == ViseHolding.JawCut.UNCUT) {
            return;
        }
        boolean step = holding.jawCut().value() == ViseHolding.JawCut.STEP;
        steps.add(writer.step(
                        "cut-jaws",
                        Step.Kind.HOLD,
                        "Cut the jaws to " + (step ? "a step" : "the outline of the part") + ", "
                                + length(holding.jawCutDepth().value().inside()) + " below their top.")
                .doing(
                        "closed as for the part on a slug below the cut; corners relieved; jaws and vise stamped with one"
                                + " number")
                .checking("part sits down on the step all along; the zero is that of this cut")
                .written());
    }

    private void between(DrawnVise holding, List<Step> steps) {
        String put = switch (holding.between().value()) {
            case NOTHING -> "";
            case ROUND_BAR -> "Round bar between moving jaw and work, at half the depth of the grip.";
            case SOFT_STRIP -> "Soft strip between moving jaw and the parts, over all of them.";
            case PAPER -> "Paper at both jaws, one clean sheet at each.";
        };
        if (!put.isEmpty()) {
            steps.add(writer.step("between", Step.Kind.HOLD, put)
                    .checking("it stays where it is as the vise is closed")
                    .written());
        }
    }

    private String row(String id) {
        return shown.plan().rows().shop().row(id).map(row -> row.name()).orElse(id);
    }

    private String length(double mm) {
        return shown.length(mm);
    }
}
