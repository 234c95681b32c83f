package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.ArrayList;
import java.util.List;
import setwright.location.indexing.Crank;
import setwright.location.indexing.Degrees;
import setwright.quantity.Measure;
import setwright.quantity.Rational;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** A circle divided on a direct plate, a collet block or a rotary table. */
final class DividedFigures {
    private static final int WHOLE = 360;

    private DividedFigures() {}

    static List<Figure> all() {
        return List.of(direct(), rotary());
    }

    private static Figure direct() {
        return new Figure(
                "index-direct",
                "{divisions} divisions on a direct plate or collet block of {positions} are",
                List.of(count("divisions"), count("positions").upTo(WHOLE)),
                List.of("step", "angle °"),
                asked -> {
                    int divisions = asked.count("divisions");
                    int positions = asked.count("positions");
                    if (!new Crank(1, positions).divides(divisions)) {
                        throw Refusal.of(
                                "divisions",
                                divisions + " do not divide " + positions
                                        + " positions; ask index-plain, or rotary-position.");
                    }
                    Worked angle = Crank.ABSOLUTE.of(
                            Unit.DEG.toInside((double) WHOLE / divisions),
                            positions / divisions + " of " + positions,
                            asked.value("divisions"),
                            asked.value("positions"));
                    return Answered.of(
                                    new Answer.Count("step", positions / divisions),
                                    new Answer.Number("angle", angle.inside(), Unit.DEG, null))
                            .showing(angle);
                });
    }

    private static Figure rotary() {
        return new Figure(
                "rotary-position",
                "{divisions} divisions on a rotary table stand at",
                List.of(
                        count("divisions"),
                        count("ratio").upTo(WHOLE).or("90"),
                        measure("division", Measure.ANGLE).upTo(10).or("1'")),
                List.of("positions [{number, turns, dial °, place, error °}]", "largest-error °"),
                DividedFigures::rotary);
    }

    private static Answered rotary(Asked asked) {
        int divisions = asked.count("divisions");
        int ratio = asked.count("ratio");
        Rational division = Degrees.exact(asked.number("division"));
        Crank crank = Crank.rotary(ratio, division);
        List<List<Answer>> rows = new ArrayList<>();
        for (Crank.Position position : crank.positions(divisions)) {
            rows.add(List.of(
                    new Answer.Count("number", position.number()),
                    new Answer.Count("turns", position.turns()),
                    degrees("dial", division.times(position.marks())),
                    new Answer.Words("place", Degrees.said(position.place().times(WHOLE))),
                    degrees("error", position.error().times(WHOLE))));
        }
        Rational worst = crank.worst(divisions).times(WHOLE);
        return Answered.of(
                        new Answer.Rows("positions", rows),
                        Answer.of(
                                "largest-error",
                                Crank.ABSOLUTE.of(
                                        Unit.DEG.toInside(worst.nearest()),
                                        "the last position is the first again",
                                        asked.value("divisions"),
                                        asked.value("ratio"),
                                        asked.value("division")),
                                Unit.DEG))
                .noting("come to every position the same way round; past one, go back half a turn and come again");
    }

    private static Answer degrees(String name, Rational degrees) {
        return Answer.of(name, Unit.DEG.toInside(degrees.nearest()), Unit.DEG);
    }
}
