package setwright.figures;

import static setwright.figures.Input.measure;

import java.util.List;
import setwright.holding.ScrewForms;
import setwright.holding.StrapForms;
import setwright.holding.TipForms;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** Screws, straps and what tips over. */
final class HoldingFigures {
    private static final double FLATTEST = 45;

    private HoldingFigures() {}

    static List<Figure> all() {
        return List.of(preload(), vise(), strap(), tipOver());
    }

    private static Figure preload() {
        return new Figure(
                "screw-preload",
                "A stud of {diameter} pulled up with {torque} presses with",
                List.of(
                        measure("torque", Measure.TORQUE),
                        measure("diameter", Measure.LENGTH),
                        measure("nut-factor", Measure.RATIO).upTo(1).or("0.2")),
                List.of("preload N"),
                asked -> Answered.of(Answer.of(
                        "preload",
                        ScrewForms.PRELOAD.of(
                                asked.value("torque"), asked.value("nut-factor"), asked.value("diameter")),
                        Unit.N)));
    }

    private static Figure vise() {
        return new Figure(
                "vise-force",
                "A vise screw of {mean-diameter} with a lead of {lead} and friction {friction} presses with",
                List.of(
                        measure("torque", Measure.TORQUE).maybe("handle-force times arm"),
                        measure("handle-force", Measure.FORCE).maybe("torque is given"),
                        measure("arm", Measure.LENGTH).maybe("torque is given"),
                        measure("mean-diameter", Measure.LENGTH),
                        measure("lead", Measure.LENGTH),
                        measure("friction", Measure.RATIO).within(0, 1),
                        measure("flank-angle", Measure.ANGLE)
                                .within(0, FLATTEST)
                                .or("0 °"),
                        measure("collar-friction", Measure.RATIO).within(0, 1).maybe("no collar"),
                        measure("collar-diameter", Measure.LENGTH).from(0).maybe("no collar")),
                List.of("force N"),
                asked -> Answered.of(Answer.of(
                        "force",
                        ScrewForms.VISE_FORCE.of(
                                torque(asked),
                                asked.value("mean-diameter"),
                                asked.value("lead"),
                                asked.value("friction"),
                                asked.value("flank-angle"),
                                asked.valueOr("collar-friction", none("collar friction", Unit.NONE)),
                                asked.valueOr("collar-diameter", none("collar mean diameter", Unit.MM))),
                        Unit.N)));
    }

    private static Given torque(Asked asked) {
        if (asked.has("torque")) {
            return asked.value("torque");
        }
        if (!asked.has("handle-force") || !asked.has("arm")) {
            throw Refusal.of("torque", "it is missing; give torque, or handle-force and arm.");
        }
        return Given.of(
                "torque", asked.number("handle-force") * asked.number("arm"), Unit.N_M, "handle force times arm");
    }

    private static Given none(String name, Unit unit) {
        return Given.of(name, 0, unit, "left out");
    }

    private static Figure strap() {
        return new Figure(
                "strap-clamp",
                "A stud that pulls with {stud-force}, {work-to-stud} from the work and {stud-to-heel} from the heel,"
                        + " presses with",
                List.of(
                        measure("stud-force", Measure.FORCE),
                        measure("work-to-stud", Measure.LENGTH),
                        measure("stud-to-heel", Measure.LENGTH)),
                List.of("on-work N", "on-heel N"),
                asked -> {
                    Given force = asked.value("stud-force");
                    Given work = asked.value("work-to-stud");
                    Given heel = asked.value("stud-to-heel");
                    return Answered.of(
                            Answer.of("on-work", StrapForms.ON_WORK.of(force, work, heel), Unit.N),
                            Answer.of("on-heel", StrapForms.ON_HEEL.of(force, work, heel), Unit.N));
                });
    }

    private static Figure tipOver() {
        return new Figure(
                "tip-over",
                "A block of {weight} on a base of {base}, pushed with {force} at a height of {height}, stands",
                List.of(
                        measure("force", Measure.FORCE),
                        measure("height", Measure.LENGTH),
                        measure("weight", Measure.FORCE).from(0),
                        measure("base", Measure.LENGTH),
                        measure("clamp-force", Measure.FORCE).from(0).maybe("no clamp"),
                        measure("clamp-to-edge", Measure.LENGTH).from(0).maybe("no clamp"),
                        measure("stop-height", Measure.LENGTH).from(0).maybe("no stop")),
                List.of("factor"),
                HoldingFigures::standing);
    }

    private static Answered standing(Asked asked) {
        if (asked.has("clamp-force") != asked.has("clamp-to-edge")) {
            throw Refusal.of(
                    asked.has("clamp-force") ? "clamp-to-edge" : "clamp-force",
                    "it is missing; a clamp needs its force and its distance from the edge.");
        }
        if (asked.numberOr("stop-height", 0) >= asked.number("height")) {
            throw Refusal.of(
                    "stop-height", "a stop as high as the force lets nothing tip; accepted: below the height.");
        }
        return Answered.of(Answer.of(
                "factor",
                TipForms.TIP_OVER.of(
                        asked.valueOr("clamp-force", none("clamp force", Unit.N)),
                        asked.valueOr("clamp-to-edge", none("clamp to edge", Unit.MM)),
                        asked.value("weight"),
                        asked.value("base"),
                        asked.value("force"),
                        asked.value("height"),
                        asked.valueOr("stop-height", none("stop height", Unit.MM))),
                Unit.NONE));
    }
}
