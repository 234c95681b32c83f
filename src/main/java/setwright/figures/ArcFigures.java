package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.location.indexing.RotaryWork;
import setwright.location.layout.SteppedArc;
import setwright.location.layout.Swept;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** Radii and corners, round on a rotary table or by steps of the table, and the middle that they go round. */
final class ArcFigures {
    private static final int MOST_STEPS = 1000;
    private static final int WHOLE = 360;

    private ArcFigures() {}

    static List<Figure> all() {
        return List.of(centre(), round(), steps());
    }

    private static Figure centre() {
        return new Figure(
                "sweep-centre",
                "An indicator in the spindle that reads {left} on the left, {right} on the right, {front} in front and"
                        + " {back} behind is off the middle by",
                List.of(
                        measure("left", Measure.LENGTH).any(),
                        measure("right", Measure.LENGTH).any(),
                        measure("front", Measure.LENGTH).any(),
                        measure("back", Measure.LENGTH).any(),
                        choice("of", "bore", "boss").or("bore")),
                List.of("x mm", "y mm"),
                ArcFigures::centred);
    }

    private static Answered centred(Asked asked) {
        var rule = asked.is("of", "bore") ? Swept.BORE : Swept.BOSS;
        return Answered.of(
                        Answer.of("x", rule.of(asked.value("left"), asked.value("right")), Unit.MM),
                        Answer.of("y", rule.of(asked.value("front"), asked.value("back")), Unit.MM))
                .noting(
                        "move the spindle over the work by x to the right and y to the back, or the table the other way;"
                                + " sweep again: all four then read alike")
                .noting("for a rotary table sweep its bore first and set zero there, then bring the middle of the arc"
                        + " under the spindle by moving the work on the table");
    }

    private static Figure round() {
        return new Figure(
                "rotary-radius",
                "A radius of {radius} is cut on a rotary table by a cutter of {cutter} at",
                List.of(
                        measure("radius", Measure.LENGTH),
                        measure("cutter", Measure.LENGTH),
                        choice("cut", "outside", "inside", "slot").or("outside"),
                        measure("feed", Measure.FEED).maybe("the handle's speed is not worked out"),
                        count("ratio").upTo(WHOLE).or("90")),
                List.of("offset mm", "handle rev/min", "seconds-per-turn s"),
                ArcFigures::offset);
    }

    private static Answered offset(Asked asked) {
        RotaryWork.Cut cut = RotaryWork.Cut.valueOf(asked.words("cut").toUpperCase(Locale.ROOT));
        Value radius = asked.value("radius");
        if (cut == RotaryWork.Cut.INSIDE && asked.number("cutter") > 2 * radius.inside()) {
            throw Refusal.of("cutter", "it does not go into the radius; accepted: up to twice the radius.");
        }
        Answer offset = switch (cut) {
            case OUTSIDE -> Answer.of("offset", RotaryWork.OUTSIDE.of(radius, asked.value("cutter")), Unit.MM);
            case INSIDE -> Answer.of("offset", RotaryWork.INSIDE.of(radius, asked.value("cutter")), Unit.MM);
            case SLOT -> Answer.of("offset", radius.inside(), Unit.MM);
        };
        Worked handle =
                asked.has("feed") ? RotaryWork.HANDLE.of(asked.value("feed"), asked.value("ratio"), radius) : null;
        return Answered.of(offset, turns(handle), seconds(handle))
                .noting("centre the table under the spindle, bring the middle of the arc over it, then move one axis"
                        + " by the offset and lock both; turn from tangent to tangent, against the teeth")
                .noting("the feed is that of the work at the radius itself");
    }

    private static Answer turns(@Nullable Worked handle) {
        return handle == null
                ? new Answer.Nothing("handle", "rev/min")
                : Answer.of("handle", handle.inside(), Unit.RPM);
    }

    private static Answer seconds(@Nullable Worked handle) {
        return handle == null
                ? new Answer.Nothing("seconds-per-turn", "s")
                : Answer.of("seconds-per-turn", 2 * Math.PI / handle.inside(), Unit.SECOND);
    }

    private static Figure steps() {
        return new Figure(
                "radius-steps",
                "A radius of {radius} is cut in steps by a cutter of {cutter} at",
                List.of(
                        measure("radius", Measure.LENGTH),
                        measure("cutter", Measure.LENGTH),
                        choice("cut", "outside", "inside").or("outside"),
                        measure("start", Measure.ANGLE).any().or("0 °"),
                        measure("span", Measure.ANGLE).upTo(WHOLE).or("90 °"),
                        count("steps").upTo(MOST_STEPS).or("10")),
                List.of("points [{x, y}]", "ridge mm"),
                ArcFigures::stepped);
    }

    private static Answered stepped(Asked asked) {
        double start = asked.number("start");
        double span = asked.number("span");
        int steps = asked.count("steps");
        SteppedArc arc = asked.is("cut", "outside")
                ? SteppedArc.outside(asked.number("radius"), asked.number("cutter"), start, span, steps)
                : SteppedArc.inside(asked.number("radius"), asked.number("cutter"), start, span, steps);
        List<List<Answer>> rows = arc.places().stream()
                .map(place -> List.<Answer>of(Answer.of("x", place.x(), Unit.MM), Answer.of("y", place.y(), Unit.MM)))
                .toList();
        Given[] from = {
            asked.value("radius"),
            asked.value("cutter"),
            asked.value("start"),
            asked.value("span"),
            asked.value("steps")
        };
        return Answered.of(
                        new Answer.Rows("points", rows),
                        Answer.of(
                                "ridge", SteppedArc.PLACES.of(arc.ridge(), "ridge between two places", from), Unit.MM))
                .noting("the middle of the cutter, from the centre of the arc; x to the right, y to the back");
    }
}
