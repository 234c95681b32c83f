package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;

/** The steps that set a device up and put the part on it; straps over it come after. */
record DeviceSteps(DrawnDevice holding, OnTable words, Steps.Writer writer) {
    /** @param grip what it holds, for the last of them */
    List<Step> steps(String up, String grip) {
        List<Step> steps = new ArrayList<>();
        steps.add(stood());
        if (indexes()) {
            if (holding.on() == DeviceHolding.On.ROTARY_TABLE && !holding.upright()) {
                steps.add(centred());
            }
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
        steps.add(writer.step("load", Step.Kind.HOLD, "Part " + where + ", " + up + ".")
                .doing(taken())
                .checking(seated())
                .biting(grip)
                .written());
        return steps;
    }

    private boolean indexes() {
        return holding.on() == DeviceHolding.On.ROTARY_TABLE || holding.on() == DeviceHolding.On.DIVIDING_HEAD;
    }

    private Step stood() {
        String name = words.row(holding.device().value());
        if (holding.inVise()) {
            return writer.step(
                            "bolt",
                            Step.Kind.HOLD,
                            name + " in " + words.row(holding.vise().value()) + ", against the solid jaw.")
                    .doing("vise wiped, jaws closed firm, tapped down")
                    .checking("nothing under it slides by hand")
                    .written();
        }
        return writer.step("bolt", Step.Kind.HOLD, "Bolt " + name + " to the table, keys in the slot.")
                .doing(clocked())
                .checking("nuts tight, clocked again after tightening")
                .written();
    }

    private Step centred() {
        return writer.step(
                        "centre", Step.Kind.HOLD, "Spindle over the middle of the table: both dials to nought there.")
                .doing("then offset by the radius, and lock the table's slides")
                .checking("indicator swept in its bore stands still")
                .written();
    }

    private String clocked() {
        return switch (holding.on()) {
            case ROTARY_TABLE ->
                holding.upright()
                        ? "face clocked along Y and upright"
                        : "indicator in the spindle, swept in its bore: X and Y of its middle";
            case DIVIDING_HEAD -> "test bar in the head, clocked level and along X";
            case ANGLE_PLATE -> "clock its face along X and upright";
            case V_BLOCKS -> "a true bar in both, clocked along X and level";
            case FIXTURE_PLATE, MAGNETIC_CHUCK, SET_UP_BLOCKS, COLLET_BLOCK -> "clock its edge along X";
        };
    }

    private String taken() {
        return switch (holding.fastening().value()) {
            case TAPE -> "both faces wiped with spirit, strips side by side, pressed down hard all over; no coolant";
            case GLUE -> "both faces wiped with spirit, thin and even, weighted until it has set; no coolant";
            case SANDWICH -> "sheet flat between the boards, screws all round it, none in a path";
            case BOLTS -> "bolts with washers through its holes, nipped, tapped down, tight crosswise";
            case CHUCK -> "jaws wiped, part clocked true, key turned at each hole, key out";
            case COLLET -> "collet tight, block against the solid jaw";
            case MANDREL -> "bore and mandrel clean, drawn tight, clocked true";
            case BETWEEN_CENTRES -> "centres clean, dog tight in its driver, tailstock nipped and locked";
            case MAGNET -> "face wiped with the hand, part down, magnet on; stops against the cut";
            case STRAPS -> strapped();
        };
    }

    private String strapped() {
        return switch (holding.on()) {
            case ROTARY_TABLE -> "middle of the part over the middle of the table, clocked as it is turned";
            case V_BLOCKS -> "laid in both vees, turned by hand once, then strapped";
            case ANGLE_PLATE -> "face and part clean, clamps nipped, tapped down, clamps tight";
            case FIXTURE_PLATE, SET_UP_BLOCKS, COLLET_BLOCK, DIVIDING_HEAD, MAGNETIC_CHUCK ->
                switch (holding.located().value()) {
                    case EDGES, CENTRE -> "against the stops, tapped down";
                    case DOWELS -> "on its dowels, tapped down";
                    case POCKET -> "in its pocket, chips blown out, tapped down";
                };
        };
    }

    private String seated() {
        return switch (holding.fastening().value()) {
            case TAPE, GLUE -> "no corner lifts with a thumbnail";
            case CHUCK, COLLET, MANDREL, BETWEEN_CENTRES -> "clocked true, key and wrench off";
            case STRAPS, BOLTS, SANDWICH, MAGNET -> "it sits all over, and does not rock";
        };
    }
}
