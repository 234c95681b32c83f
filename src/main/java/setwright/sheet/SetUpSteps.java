package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.Tilt;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.plan.hold.OperationHold;

/** The steps of one set-up: load it, find zero, run its operations, take it out. */
final class SetUpSteps {
    private final Shown shown;
    private final DrawnSetUp setUp;
    private final Steps.Writer writer;
    private final List<Step> steps = new ArrayList<>();
    private final boolean afterTilt;

    /** @param afterTilt whether a set-up before this one leaves the head swivelled */
    SetUpSteps(Shown shown, DrawnSetUp setUp, boolean afterTilt) {
        this.shown = shown;
        this.setUp = setUp;
        this.afterTilt = afterTilt;
        writer = new Steps.Writer(setUp.id(), "");
    }

    List<Step> steps() {
        if (afterTilt && !byHead()) {
            tram();
        }
        clean();
        hold();
        tilt();
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
                        "Wipe " + wiped() + ". Deburr the part; mark the corner that goes to the stop.")
                .checking("no chip under anything that sits")
                .written());
    }

    private String wiped() {
        return switch (setUp.holding().kind()) {
            case VISE -> "table, vise bed, jaws and parallels";
            case TABLE -> "table, T-slots and packing";
            case DEVICE -> "table, T-slots, underside and face of the device";
        };
    }

    private boolean byHead() {
        Tilt tilt = setUp.tilt();
        return tilt != null && tilt.by() == Tilt.By.HEAD;
    }

    private void tram() {
        steps.add(writer.step("tram", Step.Kind.HOLD, "Head square again: tram it over the bare table, both ways.")
                .doing("indicator swept round at 150 mm, nuts tight, swept once more")
                .checking("the same all round; write the reading down")
                .holding()
                .written());
    }

    private void hold() {
        switch (setUp.holding().kind()) {
            case VISE -> vise((DrawnVise) setUp.holding());
            case TABLE, DEVICE -> steps.addAll(new StrapSteps(shown, setUp, writer).steps());
        }
    }

    private void tilt() {
        Tilt tilt = setUp.tilt();
        if (tilt != null) {
            steps.add(writer.step("tilt", Step.Kind.HOLD, TiltWords.set(tilt))
                    .doing(TiltWords.proved(tilt))
                    .checking("proved again after everything is tight")
                    .holding()
                    .written());
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
        steps.addAll(new JawSteps(writer, shown).all(holding));
        steps.add(writer.step(
                        "load",
                        Step.Kind.HOLD,
                        between(holding)
                                + Shown.word(setUp.up().value()) + " side up, stop corner to the stop. Close "
                                + Shown.word(holding.grip().value()) + ".")
                .doing(gang(holding) + "tap it down, try the parallels, tighten, try them again")
                .checking(
                        holding.onParallels()
                                ? "neither parallel slides"
                                : "it sits " + new JawWords(holding).seat(plan().rows()) + " all over")
                .biting(grip())
                .written());
        steps.add(writer.step("handle", Step.Kind.HOLD, "Vise handle off. Table stops set clear.")
                .checking("nothing stands in the way of the table")
                .written());
    }

    private static String between(DrawnVise holding) {
        int parts = holding.parts().value();
        return parts > 1 ? parts + " parts side by side between the jaws, " : "Part between the jaws, ";
    }

    private static String gang(DrawnVise holding) {
        boolean strip = holding.between().value() == ViseHolding.Between.SOFT_STRIP;
        return holding.parts().value() < 2
                ? ""
                : strip
                        ? "measure each across first; "
                        : "measure each across first, a strip of card over the low ones; ";
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
                        .doing(zeroWords().find())
                        .checking(zeroWords().check())
                        .holding()
                        .written()));
        if (!zeroWords().dials().isEmpty()) {
            steps.add(writer.step("dials", Step.Kind.ZERO, "Dials at nought, turns counted from here.")
                    .doing(zeroWords().dials())
                    .checking("handle locks and table stops as they were when zero was found")
                    .written());
        }
        steps.add(writer.step("finder-out", Step.Kind.ZERO, "Edge finder or indicator out before the speed goes up.")
                .written());
    }

    private ZeroWords zeroWords() {
        return new ZeroWords(setUp.datum(), plan().rows().machine());
    }

    private void after() {
        steps.add(writer.step("measure", Step.Kind.MEASURE, "Measure the first part where it is, before it is let go.")
                .doing("write the readings down")
                .checking("every size of this set-up; the first part before the second is started")
                .holding()
                .written());
        steps.add(writer.step("unload", Step.Kind.UNLOAD, "Spindle off. Part out, edges deburred, " + brushed())
                .written());
    }

    private String brushed() {
        return switch (setUp.holding().kind()) {
            case VISE -> "vise and parallels brushed. After the first part: tighten vise bolts again.";
            case TABLE -> "table, packing and slots brushed. Nuts eased one after the other, not one at once.";
            case DEVICE -> "device brushed. After the first part: tighten its bolts again.";
        };
    }
}
