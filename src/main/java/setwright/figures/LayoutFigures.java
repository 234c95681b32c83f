package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.list;
import static setwright.figures.Input.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.location.BoltCircle;
import setwright.location.Contributor;
import setwright.location.Dial;
import setwright.location.ErrorBudget;
import setwright.location.Place;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** Where things come out. */
final class LayoutFigures {
    private static final double WHOLE = 360;

    /** No table is longer: 100 m. */
    private static final double FARTHEST = 100_000;

    private LayoutFigures() {}

    static List<Figure> all() {
        return List.of(boltCircle(), chord(), dial(), stack());
    }

    private static Figure boltCircle() {
        return new Figure(
                "bolt-circle",
                "{holes} holes on a circle of {diameter} lie at",
                List.of(
                        count("holes"),
                        measure("diameter", Measure.LENGTH),
                        measure("start", Measure.ANGLE).any().or("0 °"),
                        list("centre", Measure.LENGTH).or("0,0"),
                        measure("part-circle", Measure.ANGLE).upTo(WHOLE).maybe("the whole circle"),
                        choice("direction", "anticlockwise", "clockwise").or("anticlockwise")),
                List.of("points [{x, y}]", "chord mm"),
                LayoutFigures::holes);
    }

    private static Answered holes(Asked asked) {
        List<Given> centre = asked.list("centre");
        if (centre.size() != 2) {
            throw Refusal.of("centre", "'" + asked.words("centre") + "' is not accepted; accepted: x,y.");
        }
        int holes = asked.count("holes");
        double span = asked.numberOr("part-circle", 2 * Math.PI);
        double way = asked.is("direction", "clockwise") ? -1 : 1;
        BoltCircle circle = new BoltCircle(
                holes,
                asked.number("diameter"),
                new Place(centre.get(0).inside(), centre.get(1).inside()),
                asked.number("start"),
                way * span);
        List<List<Answer>> rows = circle.places().stream()
                .map(place -> List.<Answer>of(Answer.of("x", place.x(), Unit.MM), Answer.of("y", place.y(), Unit.MM)))
                .toList();
        Answer chord = holes == 1
                ? new Answer.Nothing("chord", "mm")
                : Answer.of("chord", BoltCircle.CHORD.of(asked.value("diameter"), round(asked, holes, span)), Unit.MM);
        return Answered.of(new Answer.Rows("points", rows), chord);
    }

    private static Figure chord() {
        return new Figure(
                "chord",
                "On a circle of {diameter} with {holes} holes the straight distance is",
                List.of(
                        measure("diameter", Measure.LENGTH),
                        count("holes").from(2),
                        count("spaces").or("1"),
                        measure("pin", Measure.LENGTH).maybe("from middle to middle only")),
                List.of("chord mm", "over-pins mm"),
                asked -> {
                    if (asked.count("spaces") >= asked.count("holes")) {
                        throw Refusal.of("spaces", "they go round the circle; accepted: fewer than the holes.");
                    }
                    Worked chord = BoltCircle.SPACED_CHORD.of(
                            asked.value("diameter"), asked.value("spaces"), asked.value("holes"));
                    return Answered.of(
                            Answer.of("chord", chord, Unit.MM),
                            asked.has("pin")
                                    ? Answer.of("over-pins", chord.inside() + asked.number("pin"), Unit.MM)
                                    : new Answer.Nothing("over-pins", "mm"));
                });
    }

    /** How many of these steps make a whole circle. */
    private static Value round(Asked asked, int holes, double span) {
        boolean closed = span >= 2 * Math.PI * (1 - 1e-12);
        return closed
                ? asked.value("holes")
                : Given.of(
                        "holes on the whole circle",
                        2 * Math.PI * (holes - 1) / span,
                        Unit.NONE,
                        "holes of this spacing");
    }

    private static Figure dial() {
        return new Figure(
                "dial",
                "A move of {distance} at {per-turn} a turn is",
                List.of(
                        measure("distance", Measure.LENGTH).within(-FARTHEST, FARTHEST),
                        measure("per-turn", Measure.LENGTH).within(0.001, 1000),
                        measure("division", Measure.LENGTH).from(1e-6).maybe("the dial is not read"),
                        measure("from", Measure.LENGTH)
                                .within(-FARTHEST, FARTHEST)
                                .or("0 mm"),
                        choice("approach", "up", "down").or("up"),
                        measure("backlash", Measure.LENGTH).from(0).maybe("none")),
                List.of("turns", "divisions", "left-over mm"),
                LayoutFigures::turns);
    }

    private static Answered turns(Asked asked) {
        BigDecimal perTurn = Dial.exact(asked.number("per-turn"));
        boolean read = asked.has("division");
        BigDecimal division = read ? Dial.exact(asked.number("division")) : perTurn;
        if (division.compareTo(perTurn) > 0) {
            throw Refusal.of(
                    "division",
                    "it is larger than a turn; accepted: above 0 up to " + perTurn.toPlainString() + " mm.");
        }
        BigDecimal from = Dial.exact(asked.number("from"));
        BigDecimal distance = Dial.exact(asked.number("distance"));
        Dial.Move move = new Dial(perTurn, division).move(distance, from);
        Worked divisions = Dial.MOVE.of(
                move.divisions().doubleValue(),
                "turns: " + move.turns() + ", dial reading " + move.reading().toPlainString() + " mm",
                asked.value("distance"),
                asked.value("per-turn"),
                asked.value("from"));
        BigDecimal left = read ? move.leftOver() : move.reading();
        Answered answered = Answered.of(
                new Answer.Count("turns", move.turns()),
                read ? Answer.of("divisions", divisions, Unit.NONE) : new Answer.Nothing("divisions", ""),
                Answer.of("left-over", left.doubleValue(), Unit.MM));
        return approach(asked, answered, from, distance);
    }

    private static Answered approach(Asked asked, Answered answered, BigDecimal from, BigDecimal distance) {
        Dial.Approach way = asked.is("approach", "up") ? Dial.Approach.UP : Dial.Approach.DOWN;
        BigDecimal backlash = Dial.exact(asked.numberOr("backlash", 0));
        List<BigDecimal> stops = Dial.stops(from, from.add(distance), way, backlash);
        return stops.size() < 2 || backlash.signum() == 0
                ? answered
                : answered.noting("to take the backlash up wind first to "
                        + stops.stream()
                                .map(stop -> stop.stripTrailingZeros().toPlainString() + " mm")
                                .collect(Collectors.joining(", then to "))
                        + "; go a little beyond the first");
    }

    private static Figure stack() {
        return new Figure(
                "tolerance-stack",
                "Errors of {contributors} add up to",
                List.of(list("contributors", Measure.LENGTH).from(0)),
                List.of("worst-case mm", "root-sum-square mm"),
                asked -> {
                    List<Contributor> contributors = new ArrayList<>();
                    for (Given one : asked.list("contributors")) {
                        contributors.add(Contributor.eachAxis(
                                one.name(), one.inside(), Source.of("common practice: typed here")));
                    }
                    ErrorBudget budget = ErrorBudget.alongAnAxis(contributors);
                    Value[] from = asked.list("contributors").toArray(Value[]::new);
                    return Answered.of(
                            Answer.of("worst-case", ErrorBudget.WORST_CASE.of(budget.worstCase(), "", from), Unit.MM),
                            Answer.of(
                                    "root-sum-square",
                                    ErrorBudget.ROOT_SUM_SQUARE.of(budget.rootSumSquare(), "", from),
                                    Unit.MM));
                });
    }
}
