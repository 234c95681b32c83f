package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DeviceHolding;
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
            case TABLE, PACKING -> "against the stops where there are any; clock the back edge along X";
        };
    }

    private static String seated(DrawnTable holding) {
        return switch (holding.seat().value()) {
            case T_SLOT -> "bears on both edges over its whole length; crown level";
            case TABLE -> "no paper strip pulls out at any corner";
            case PACKING -> "no piece of packing slides by hand";
        };
    }

    private void onDevice(DrawnDevice holding) {
        steps.add(writer.step(
                        "bolt",
                        Step.Kind.HOLD,
                        "Bolt " + words.row(holding.device().value()) + " to the table, keys in the slot.")
                .doing(clocked(holding.on()))
                .checking("nuts tight, clocked again after tightening")
                .written());
        if (holding.on() == DeviceHolding.On.ROTARY_TABLE || holding.on() == DeviceHolding.On.DIVIDING_HEAD) {
            steps.add(writer.step(
                            "index",
                            Step.Kind.HOLD,
                            "Dial to nought, every division come to from one side. Lock it before each cut,"
                                    + " free it before each turn.")
                    .checking("locked; the handle's spring plunger home in its hole")
                    .holding()
                    .written());
        }
        String where = Words.atMost(Step.WORDS / 2, words.device(holding));
        steps.add(writer.step("load", Step.Kind.HOLD, "Part " + where + ", " + up() + ".")
                .doing(taken(holding.on()))
                .checking("it sits all over, and does not rock")
                .biting(grip())
                .written());
    }

    private static String clocked(DeviceHolding.On on) {
        return switch (on) {
            case ROTARY_TABLE -> "indicator in the spindle, swept in its bore: X and Y of its middle";
            case DIVIDING_HEAD -> "test bar in the head, clocked level and along X";
            case ANGLE_PLATE -> "clock its face along X and upright";
            case V_BLOCKS -> "a true bar in both, clocked along X and level";
            case FIXTURE_PLATE, MAGNETIC_CHUCK, SET_UP_BLOCKS, COLLET_BLOCK -> "clock its edge along X";
        };
    }

    private static String taken(DeviceHolding.On on) {
        return switch (on) {
            case ROTARY_TABLE -> "middle of the part over the middle of the table, clocked as it is turned";
            case DIVIDING_HEAD -> "chuck tight, bar clocked at the chuck and at its far end";
            case V_BLOCKS -> "laid in both vees, turned by hand once, then strapped";
            case ANGLE_PLATE -> "face and part clean, clamps nipped, tapped down, clamps tight";
            case MAGNETIC_CHUCK -> "face wiped with the hand, part down, magnet on; stops against the cut";
            case COLLET_BLOCK -> "collet tight, block against the solid jaw";
            case FIXTURE_PLATE, SET_UP_BLOCKS -> "against the stops, tapped down";
        };
    }

    private String up() {
        return Shown.word(setUp.up().value()) + " side up";
    }

    private void straps() {
        List<StrapPlace> all = words.straps();
        for (StrapPlace strap : all) {
            steps.add(writer.step(
                            strap.drawn().id(),
                            Step.Kind.HOLD,
                            "T-nut and stud " + words.studLength(strap) + " in the slot for the " + strap.name()
                                    + ": pad " + words.pad(strap) + ", heel " + words.heel(strap) + ".")
                    .doing("stud "
                            + words.length(strap.drawn().padToStud().value().inside())
                            + " from the pad; strap level or its heel slightly high")
                    .checking("stud not through the T-nut; the part bears under the pad")
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
