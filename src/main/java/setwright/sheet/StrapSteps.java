package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.job.TableHolding;
import setwright.plan.hold.OperationHold;
import setwright.plan.part.StrapPlace;

/** The steps that lay a part on the table or a device and strap it down. */
final class StrapSteps {
    private final Shown shown;
    private final DrawnSetUp setUp;
    private final Steps.Writer writer;
    private final OnTable words;
    private final List<Step> steps = new ArrayList<>();

    StrapSteps(Shown shown, DrawnSetUp setUp, Steps.Writer writer) {
        this.shown = shown;
        this.setUp = setUp;
        this.writer = writer;
        words = new OnTable(shown.plan(), setUp, shown.printing());
    }

    List<Step> steps() {
        switch (setUp.holding().kind()) {
            case TABLE -> onTable((DrawnTable) setUp.holding());
            case DEVICE -> onDevice((DrawnDevice) setUp.holding());
            case VISE -> throw new IllegalArgumentException("Set-up " + setUp.id() + " is held in a vise.");
        }
        straps();
        return steps;
    }

    private void onTable(DrawnTable holding) {
        if (holding.seat().value() == TableHolding.Seat.PACKING) {
            steps.add(writer.step(
                            "packing",
                            Step.Kind.HOLD,
                            "Packing "
                                    + words.length(
                                            holding.packingHeight().value().inside()) + " high, "
                                    + words.row(holding.packing().value())
                                    + ", one piece under every pad.")
                    .checking("all of one height, clean, none rocks")
                    .written());
        }
        String lying = Words.atMost(Step.WORDS / 2, words.table(holding));
        steps.add(writer.step("load", Step.Kind.HOLD, "Part " + lying + ", " + up() + ".")
                .doing(loading(holding))
                .checking(seated(holding))
                .written());
    }

    private static String loading(DrawnTable holding) {
        return switch (holding.seat().value()) {
            case T_SLOT -> "edges of the slot deburred, shaft tapped down along it; clock its crown end to end";
            case JACKS -> "jacks run up until the scribed lines read level from the table, then locked";
            case TABLE, PACKING -> "against the stops where there are any; clock the back edge along X";
        };
    }

    private static String seated(DrawnTable holding) {
        return switch (holding.seat().value()) {
            case T_SLOT -> "bears on both edges over its whole length; crown level";
            case TABLE -> "no paper strip pulls out at any corner";
            case JACKS -> "every jack bears; scribed lines within a line's width at both ends and both sides";
            case PACKING -> "no piece of packing slides by hand";
        };
    }

    private void onDevice(DrawnDevice holding) {
        steps.addAll(new DeviceSteps(holding, words, writer).steps(up(), grip()));
    }

    private String up() {
        return Shown.word(setUp.up().value()) + " side up";
    }

    private void straps() {
        List<StrapPlace> all = words.straps();
        for (StrapPlace strap : all) {
            steps.add(writer.step(strap.drawn().id(), Step.Kind.HOLD, put(strap))
                    .doing(doing(strap))
                    .checking(
                            "stud not through the T-nut; a strip of paper under the part is tight under the pad, else shim")
                    .written());
        }
        if (!all.isEmpty()) {
            String torque = words.torque(all.get(0));
            boolean one = all.stream().allMatch(strap -> words.torque(strap).equals(torque));
            steps.add(writer.step(
                            "nuts",
                            Step.Kind.HOLD,
                            "Nuts to " + (one ? torque : "the torque of each") + ", crosswise, in two rounds.")
                    .doing("part tapped down between the rounds")
                    .checking("packing tight, back edge clocked again; wrench off the table")
                    .biting(grip())
                    .written());
        }
    }

    private String put(StrapPlace strap) {
        String stud = "T-nut and stud " + words.studLength(strap) + " in the slot for the " + strap.name() + ": ";
        return switch (strap.by()) {
            case STRAP -> stud + "pad " + words.pad(strap) + ", heel " + words.heel(strap) + ".";
            case EDGE_CLAMP -> "T-nut in the slot for the " + strap.name() + ", " + words.pad(strap) + ".";
            case BOLT -> stud + "through the hole " + words.pad(strap) + ".";
        };
    }

    private String doing(StrapPlace strap) {
        String pad = switch (strap.drawn().pad().value()) {
            case BARE -> "";
            case PAPER -> "; paper under the pad";
            case BRASS -> "; brass under the pad";
        };
        return switch (strap.by()) {
            case STRAP ->
                "stud " + words.length(strap.drawn().padToStud().value().inside())
                        + " from the pad; strap level or its heel slightly high" + pad;
            case EDGE_CLAMP -> "pushed home by hand, nipped in pairs across the part, then tight" + pad;
            case BOLT -> "washer on a clean face; nothing but the stud in the hole" + pad;
        };
    }

    private String grip() {
        Optional<OperationHold> weakest = shown.plan()
                .hold()
                .weakest(setUp.id())
                .filter(hold -> !hold.firstToGive().isEmpty());
        return weakest.map(hold -> "holds "
                        + shown.printing().factor(hold.factor().pessimistic()) + " to "
                        + shown.printing().factor(hold.factor().expected()) + " times the heaviest cut; then the part "
                        + hold.motion())
                .orElse("");
    }
}
