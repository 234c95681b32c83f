package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.list;
import static setwright.figures.Input.measure;

import java.util.List;
import java.util.Locale;
import setwright.location.BoringHead;
import setwright.location.Place;
import setwright.location.layout.EdgeFind;
import setwright.location.layout.SpotDepth;
import setwright.location.layout.ThreePoints;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** Where faces and circles are that a tip has touched, and how deep a point goes. */
final class TouchFigures {
    private TouchFigures() {}

    static List<Figure> all() {
        return List.of(touchOff(), middle(), spotDepth(), circle(), boringHead());
    }

    private static Figure touchOff() {
        return new Figure(
                "touch-off",
                "The {side} face that is touched at a reading of {reading} lies at",
                List.of(
                        measure("reading", Measure.LENGTH).any(),
                        measure("tip", Measure.LENGTH).from(0).maybe("paper is given"),
                        measure("paper", Measure.LENGTH).from(0).maybe("none"),
                        choice("side", "left", "right", "front", "back", "top")),
                List.of("zero mm"),
                TouchFigures::zero);
    }

    private static Answered zero(Asked asked) {
        asked.requireOneOf("tip", "paper");
        EdgeFind.Side side = EdgeFind.Side.valueOf(asked.words("side").toUpperCase(Locale.ROOT));
        Given reading = asked.value("reading");
        Given tip = asked.valueOr("tip", Given.of("tip", 0, Unit.MM, "left out"));
        Given paper = asked.valueOr("paper", Given.of("paper", 0, Unit.MM, "left out"));
        if (side == EdgeFind.Side.TOP) {
            if (!asked.has("paper")) {
                throw Refusal.of("paper", "on the top the diameter of the tip does not count; give paper, or paper=0.");
            }
            return Answered.of(Answer.of("zero", EdgeFind.TOP.of(reading, paper), Unit.MM))
                    .noting("the top stands lower than the reading by what lies between");
        }
        Worked zero = (side.lesser() ? EdgeFind.LESSER : EdgeFind.GREATER).of(reading, tip, paper);
        return Answered.of(Answer.of("zero", zero, Unit.MM)).noting(words(side, zero.inside() - reading.inside()));
    }

    private static String words(EdgeFind.Side side, double offset) {
        String way = switch (side) {
            case LEFT -> "to the right";
            case RIGHT -> "to the left";
            case FRONT -> "to the back";
            case BACK -> "to the front";
            case TOP -> "down";
        };
        return "from the touch move the spindle " + Input.plain(Math.abs(Math.round(offset * 1e6) / 1e6)) + " mm " + way
                + " to stand over the face, and set zero there";
    }

    private static Figure middle() {
        return new Figure(
                "centre-between",
                "Between faces touched at {first} and {second} the middle lies at",
                List.of(
                        measure("first", Measure.LENGTH).any(),
                        measure("second", Measure.LENGTH).any(),
                        measure("tip", Measure.LENGTH).from(0).maybe("the width is not worked out"),
                        choice("faces", "outside", "inside").or("outside")),
                List.of("centre mm", "width mm"),
                asked -> {
                    double width = EdgeFind.width(
                            asked.number("first"),
                            asked.number("second"),
                            asked.numberOr("tip", 0),
                            asked.is("faces", "outside"));
                    if (asked.has("tip") && width <= 0) {
                        throw Refusal.of("tip", "it is larger than the way from touch to touch.");
                    }
                    return Answered.of(
                            Answer.of(
                                    "centre", EdgeFind.MIDDLE.of(asked.value("first"), asked.value("second")), Unit.MM),
                            asked.has("tip") ? Answer.of("width", width, Unit.MM) : new Answer.Nothing("width", "mm"));
                });
    }

    private static Figure spotDepth() {
        return new Figure(
                "spot-depth",
                "For a mouth of {chamfer-diameter} a point of {angle} goes",
                List.of(
                        measure("chamfer-diameter", Measure.LENGTH),
                        measure("angle", Measure.ANGLE).within(20, 170),
                        measure("tip-diameter", Measure.LENGTH).from(0).or("0 mm")),
                List.of("depth mm"),
                asked -> {
                    if (asked.number("tip-diameter") >= asked.number("chamfer-diameter")) {
                        throw Refusal.of("tip-diameter", "it is no smaller than the mouth; accepted: below it.");
                    }
                    return Answered.of(Answer.of(
                            "depth",
                            SpotDepth.DEPTH.of(
                                    asked.value("chamfer-diameter"), asked.value("tip-diameter"), asked.value("angle")),
                            Unit.MM));
                });
    }

    private static Figure boringHead() {
        return new Figure(
                "boring-head",
                "With divisions of {division} that read the {reads} a bore of {from} becomes {to} by",
                List.of(
                        measure("from", Measure.LENGTH),
                        measure("to", Measure.LENGTH),
                        measure("division", Measure.LENGTH),
                        choice("reads", "diameter", "radius")),
                List.of("divisions"),
                asked -> {
                    boolean diameter = asked.is("reads", "diameter");
                    return Answered.of(Answer.of(
                                    "divisions",
                                    (diameter ? BoringHead.BY_DIAMETER : BoringHead.BY_RADIUS)
                                            .of(asked.value("to"), asked.value("from"), asked.value("division")),
                                    Unit.NONE))
                            .noting(
                                    diameter
                                            ? "the dial reads the diameter: a head that reads the radius takes half"
                                            : "the dial reads the radius: a head that reads the diameter takes twice");
                });
    }

    private static Figure circle() {
        return new Figure(
                "circle-from-points",
                "The circle through {points} has",
                List.of(list("points", Measure.LENGTH)),
                List.of("centre mm (x, y)", "diameter mm"),
                TouchFigures::through);
    }

    private static Answered through(Asked asked) {
        List<Given> points = asked.list("points");
        if (points.size() != 6) {
            throw Refusal.of(
                    "points",
                    "'" + asked.words("points") + "' has " + points.size() + " numbers; accepted:"
                            + " x1,y1,x2,y2,x3,y3.");
        }
        ThreePoints circle;
        try {
            circle = ThreePoints.through(place(points, 0), place(points, 2), place(points, 4));
        } catch (IllegalArgumentException flat) {
            throw Refusal.of("points", String.valueOf(flat.getMessage()));
        }
        return Answered.of(
                new Answer.Numbers(
                        "centre", List.of(circle.centre().x(), circle.centre().y()), Unit.MM),
                Answer.of(
                        "diameter",
                        ThreePoints.CIRCLE.of(circle.diameter(), "", points.toArray(Given[]::new)),
                        Unit.MM));
    }

    private static Place place(List<Given> points, int from) {
        return new Place(points.get(from).inside(), points.get(from + 1).inside());
    }
}
