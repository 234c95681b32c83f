package setwright.figures;

import static setwright.figures.Input.measure;

import java.util.List;
import setwright.cutting.SpeedAndFeed;
import setwright.location.Thermal;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.reach.ThroughDepth;
import setwright.reach.Travel;

/** How far a tool goes, and what warmth adds. */
final class TravelFigures {
    private static final Input POINT =
            measure("point-angle", Measure.ANGLE).within(60, 179).or("118 °");

    private TravelFigures() {}

    static List<Figure> all() {
        return List.of(expansion(), drillPoint(), through(), saw());
    }

    private static Figure expansion() {
        return new Figure(
                "expansion",
                "{length} of {material}, warmer by {degrees}, grow by",
                List.of(
                        measure("length", Measure.LENGTH),
                        Input.words("material"),
                        measure("degrees", Measure.TEMPERATURE_STEP).any()),
                List.of("growth mm"),
                asked -> Answered.of(Answer.of(
                        "growth",
                        Thermal.GROWTH.of(
                                LoadFigures.ofMaterial(
                                        asked.material(),
                                        "expansion",
                                        asked.material().expansion().inside(),
                                        Unit.PER_KELVIN,
                                        "expansion"),
                                asked.value("length"),
                                asked.value("degrees")),
                        Unit.MM)));
    }

    private static Figure drillPoint() {
        return new Figure(
                "drill-point",
                "The point of a drill of {diameter} is long",
                List.of(measure("diameter", Measure.LENGTH), POINT),
                List.of("length mm"),
                asked -> Answered.of(Answer.of(
                        "length",
                        ThroughDepth.POINT_LENGTH.of(asked.value("diameter"), asked.value("point-angle")),
                        Unit.MM)));
    }

    private static Figure through() {
        return new Figure(
                "through-depth",
                "To come through {thickness} a drill of {diameter} travels",
                List.of(
                        measure("thickness", Measure.LENGTH),
                        measure("diameter", Measure.LENGTH),
                        POINT,
                        measure("over-run", Measure.LENGTH).from(0).or("1 mm"),
                        measure("gap", Measure.LENGTH).from(0).maybe("nothing is under the part")),
                List.of("travel mm", "clears"),
                asked -> {
                    Worked point = ThroughDepth.POINT_LENGTH.of(asked.value("diameter"), asked.value("point-angle"));
                    Worked travel = ThroughDepth.TRAVEL.of(asked.value("thickness"), point, asked.value("over-run"));
                    double spare = asked.numberOr("gap", 0) - point.inside() - asked.number("over-run");
                    return Answered.of(
                            Answer.of("travel", travel, Unit.MM),
                            asked.has("gap")
                                    ? new Answer.Flag("clears", spare >= 0)
                                    : new Answer.Nothing("clears", ""));
                });
    }

    private static Figure saw() {
        return new Figure(
                "saw-reach",
                "A saw of {saw} on a flange of {flange} reaches",
                List.of(
                        measure("saw", Measure.LENGTH),
                        measure("flange", Measure.LENGTH),
                        measure("clearance", Measure.LENGTH).from(0).or("1 mm")),
                List.of("depth mm", "run-off mm"),
                asked -> {
                    Worked depth =
                            Travel.SAW_REACH.of(asked.value("saw"), asked.value("flange"), asked.value("clearance"));
                    if (depth.inside() <= 0) {
                        throw Refusal.of("flange", "with it and the clearance nothing of the saw is left to cut with.");
                    }
                    return Answered.of(
                            Answer.of("depth", depth, Unit.MM),
                            Answer.of("run-off", SpeedAndFeed.APPROACH.of(depth, asked.value("saw")), Unit.MM));
                });
    }
}
