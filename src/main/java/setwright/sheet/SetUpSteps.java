package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.plan.hold.OperationHold;

/** The steps of one set-up: load it, find zero, run its operations, take it out. */
final class SetUpSteps {
    private final Shown shown;
    private final DrawnSetUp setUp;
    private final Steps.Writer writer;
    private final List<Step> steps = new ArrayList<>();

    SetUpSteps(Shown shown, DrawnSetUp setUp) {
        this.shown = shown;
        this.setUp = setUp;
        writer = new Steps.Writer(setUp.id(), "");
    }

    List<Step> steps() {
        clean();
        hold();
        zero();
        Optional<DrawnOperation> before = Optional.empty();
        for (DrawnOperation operation : setUp.operations()) {
            steps.addAll(new OperationSteps(shown, setUp, operation, before).steps());
            before = Optional.of(operation);
        }
        after();
        return steps;
    }

    private Plan plan() {
        return shown.plan();
    }

    private void clean() {
        steps.add(writer.step(
                        "clean",
                        Step.Kind.CLEAN,
                        "Wipe table, vise bed, jaws and parallels. Deburr the part; mark"
                                + " the corner that goes to the stop.")
                .checking("no chip under anything that sits")
                .written());
    }

    private void hold() {
        switch (setUp.holding().kind()) {
            case VISE -> vise((DrawnVise) setUp.holding());
        }
    }

    private void vise(DrawnVise holding) {
        String name = plan().rows()
                .vise(holding.vise().value())
                .map(setwright.shop.Vise::name)
                .orElse("vise");
        if (!plan().job().plan().machine().clockedIn().contains(holding.vise().value())) {
            steps.add(
                    writer.step("bolt", Step.Kind.HOLD, "Bolt the " + name + " to the table, solid jaw to the column.")
                            .doing("clock the solid jaw along X")
                            .checking("nuts tight, clocked again after tightening")
                            .written());
        }
        packing(holding);
        steps.add(writer.step(
                        "load",
                        Step.Kind.HOLD,
                        "Part between the jaws, "
                                + Shown.word(setUp.up().value()) + " side up, stop corner to the stop. Close "
                                + Shown.word(holding.grip().value()) + ".")
                .doing("tap it down, try the parallels, tighten, try them again")
                .checking(holding.onParallels() ? "neither parallel slides" : "it sits on the bed all over")
                .biting(grip())
                .written());
        steps.add(writer.step("handle", Step.Kind.HOLD, "Vise handle off. Table stops set clear.")
                .checking("nothing stands in the way of the table")
                .written());
    }

    private void packing(DrawnVise holding) {
        if (!holding.onParallels()) {
            return;
        }
        double inset = holding.parallelInset().value().inside();
        steps.add(writer.step(
                        "parallels",
                        Step.Kind.HOLD,
                        "Parallels "
                                + holding.parallelHeight().value().text() + " high, "
                                + (inset == 0 ? "one against each jaw." : shown.length(inset) + " from each jaw."))
                .checking("a pair of one height, clean, no burr")
                .written());
    }

    private String grip() {
        return plan().hold()
                .weakest(setUp.id())
                .filter(hold -> !hold.firstToGive().isEmpty())
                .map(this::grip)
                .orElse("");
    }

    private String grip(OperationHold hold) {
        return "holds " + shown.printing().factor(hold.factor().pessimistic()) + " to "
                + shown.printing().factor(hold.factor().expected()) + " times the heaviest cut; then the part "
                + hold.motion();
    }

    private void zero() {
        plan().part()
                .setUp(setUp.id())
                .ifPresent(stage -> steps.add(writer.step(
                                "zero",
                                Step.Kind.ZERO,
                                "Zero: " + new Positions(shown, setUp, stage.heights()).from() + ".")
                        .doing("set both axes to nought there, half the edge finder's tip counted in")
                        .checking("found twice, the same both times")
                        .holding()
                        .written()));
        steps.add(writer.step("finder-out", Step.Kind.ZERO, "Edge finder or indicator out before the speed goes up.")
                .written());
    }

    private void after() {
        steps.add(writer.step("measure", Step.Kind.MEASURE, "Measure the first part in the vise, before it is let go.")
                .doing("write the readings down")
                .checking("every size of this set-up; the first part before the second is started")
                .holding()
                .written());
        steps.add(writer.step(
                        "unload",
                        Step.Kind.UNLOAD,
                        "Spindle off. Part out, edges deburred, vise and parallels"
                                + " brushed. After the first part: tighten vise bolts again.")
                .written());
    }
}
