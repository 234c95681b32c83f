package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import setwright.location.indexing.CompoundIndexing;
import setwright.location.indexing.CrankMove;
import setwright.location.indexing.Degrees;
import setwright.location.indexing.DifferentialIndexing;
import setwright.location.indexing.DifferentialWay;
import setwright.location.indexing.IndexHead;
import setwright.location.indexing.IndexWays;
import setwright.location.indexing.PlainIndexing;
import setwright.location.indexing.TwoCircles;
import setwright.quantity.Measure;
import setwright.quantity.Rational;
import setwright.quantity.Unit;

/** A dividing head: crank, plates and change gears. */
final class IndexFigures {
    private static final int MOST_WAYS = 200;

    private IndexFigures() {}

    static List<Figure> all() {
        return List.of(plain(), angle(), compound(), differential(), ways());
    }

    private static Figure plain() {
        return new Figure(
                "index-plain",
                "{divisions} divisions on a dividing head are, at every one,",
                List.of(count("divisions"), HeadInputs.RATIO, HeadInputs.PLATES),
                List.of("whole-turns", "holes", "circle", "all [{turns, holes, circle}]"),
                IndexFigures::plain);
    }

    private static Answered plain(Asked asked) {
        IndexHead head = HeadInputs.head(asked);
        int divisions = asked.count("divisions");
        List<CrankMove> moves = PlainIndexing.exact(head.turns(divisions, 1), head);
        if (moves.isEmpty()) {
            throw Refusal.of(
                    "divisions",
                    "no circle of these plates makes " + divisions + " exactly; ask index-differential (gears) or"
                            + " index-compound (two circles).");
        }
        CrankMove best = moves.get(0);
        String plate = best.holes() == 0
                ? "any circle serves; " + best.turns() + " whole turns"
                : best.plate() + "; sector arms " + best.betweenArms() + " holes apart, counting both";
        return Answered.of(
                        new Answer.Count("whole-turns", best.turns()),
                        new Answer.Count("holes", best.holes()),
                        new Answer.Count("circle", best.circle()),
                        new Answer.Rows(
                                "all", moves.stream().map(IndexFigures::row).toList()))
                .noting(plate)
                .showing(PlainIndexing.PLAIN.of(
                        best.inTurns().nearest(),
                        IndexWays.said(best),
                        asked.value("ratio"),
                        asked.value("divisions")));
    }

    private static List<Answer> row(CrankMove move) {
        return List.of(
                new Answer.Count("turns", move.turns()),
                new Answer.Count("holes", move.holes()),
                new Answer.Count("circle", move.circle()));
    }

    private static Figure angle() {
        return new Figure(
                "index-angle",
                "An angle of {angle} on a dividing head is",
                List.of(measure("angle", Measure.ANGLE).upTo(3600), HeadInputs.RATIO, HeadInputs.PLATES),
                List.of("turns", "holes", "circle", "built °", "error °"),
                IndexFigures::angle);
    }

    private static Answered angle(Asked asked) {
        IndexHead head = HeadInputs.head(asked);
        Rational wanted = Degrees.exact(asked.number("angle"));
        CrankMove move = PlainIndexing.nearest(head.turns(wanted), head);
        Rational built = head.degrees(move.inTurns());
        double inside = Unit.DEG.toInside(built.nearest());
        return Answered.of(
                        new Answer.Count("turns", move.turns()),
                        new Answer.Count("holes", move.holes()),
                        new Answer.Count("circle", move.circle()),
                        Answer.of(
                                "built",
                                PlainIndexing.ANGLE.of(
                                        inside, IndexWays.said(move), asked.value("ratio"), asked.value("angle")),
                                Unit.DEG),
                        Answer.of("error", Unit.DEG.toInside(built.minus(wanted).nearest()), Unit.DEG))
                .noting("built is " + Degrees.said(built));
    }

    private static Figure compound() {
        return new Figure(
                "index-compound",
                "{divisions} divisions on two circles of one plate are",
                List.of(count("divisions"), HeadInputs.RATIO, HeadInputs.PLATES),
                List.of("ways [{first-holes, first-circle, second-holes, second-circle, same-direction}]"),
                IndexFigures::compound);
    }

    private static Answered compound(Asked asked) {
        IndexHead head = HeadInputs.head(asked);
        int divisions = asked.count("divisions");
        List<TwoCircles> ways = CompoundIndexing.exact(head.turns(divisions, 1), head.plates());
        if (ways.isEmpty()) {
            throw Refusal.of(
                    "divisions",
                    "no two circles of one plate make " + divisions
                            + " exactly; ask index-differential (gears), or index-ways for what comes nearest.");
        }
        Answer rows = new Answer.Rows(
                "ways", ways.stream().limit(MOST_WAYS).map(IndexFigures::row).toList());
        return noted(Answered.of(rows), ways.size())
                .noting("the first goes forward; where the second goes back, take the backlash up again")
                .showing(CompoundIndexing.COMPOUND.of(
                        head.turns(divisions, 1).nearest(),
                        ways.get(0).plate(),
                        asked.value("ratio"),
                        asked.value("divisions")));
    }

    private static List<Answer> row(TwoCircles way) {
        return List.of(
                new Answer.Count("first-holes", way.firstHoles()),
                new Answer.Count("first-circle", way.firstCircle()),
                new Answer.Count("second-holes", way.secondHoles()),
                new Answer.Count("second-circle", way.secondCircle()),
                new Answer.Flag("same-direction", way.same()));
    }

    private static Figure differential() {
        return new Figure(
                "index-differential",
                "{divisions} divisions with the plate geared to the spindle are",
                List.of(count("divisions"), HeadInputs.RATIO, HeadInputs.PLATES, HeadInputs.GEARS),
                List.of("ways [{turns, holes, circle, gears [driver, driven, driver, driven], idlers, plate}]"),
                IndexFigures::differential);
    }

    private static Answered differential(Asked asked) {
        IndexHead head = HeadInputs.head(asked);
        int divisions = asked.count("divisions");
        List<DifferentialWay> ways = DifferentialIndexing.ways(divisions, head);
        if (ways.isEmpty()) {
            throw Refusal.of(
                    "divisions",
                    "these gears and plates do not make " + divisions
                            + "; ask index-plain, index-compound, or index-ways for what comes nearest.");
        }
        Answer rows = new Answer.Rows(
                "ways", ways.stream().limit(MOST_WAYS).map(IndexFigures::row).toList());
        DifferentialWay best = ways.get(0);
        return noted(Answered.of(rows), ways.size())
                .noting("gears from the spindle to the plate, the second and third on one stud; turn the crank a"
                        + " little and see that the plate goes the right way before cutting")
                .showing(DifferentialIndexing.DIFFERENTIAL.of(
                        best.plateTurns().nearest(),
                        IndexWays.said(best.move()) + ", x = "
                                + best.plateTurns().numerator() + "/"
                                + best.plateTurns().denominator(),
                        asked.value("ratio"),
                        asked.value("divisions")));
    }

    private static List<Answer> row(DifferentialWay way) {
        return List.of(
                new Answer.Count("turns", way.move().turns()),
                new Answer.Count("holes", way.move().holes()),
                new Answer.Count("circle", way.move().circle()),
                new Answer.Counts("gears", way.train().gears()),
                new Answer.Count("idlers", way.idlers()),
                new Answer.Words("plate", way.withCrank() ? "with" : "against"));
    }

    private static Answered noted(Answered answered, int ways) {
        return ways <= MOST_WAYS
                ? answered
                : answered.noting((ways - MOST_WAYS) + " more ways, each more trouble, are not shown");
    }

    private static Figure ways() {
        return new Figure(
                "index-ways",
                "{divisions} divisions can be come by, the least trouble first,",
                List.of(
                        count("divisions"),
                        HeadInputs.RATIO,
                        HeadInputs.PLATES,
                        HeadInputs.GEARS,
                        count("direct").upTo(360).maybe("no direct plate")),
                List.of("ways [{method, move, error °, why}]"),
                asked -> Answered.of(new Answer.Rows(
                                "ways",
                                IndexWays.of(
                                                asked.count("divisions"),
                                                (int) asked.numberOr("direct", 0),
                                                HeadInputs.head(asked))
                                        .stream()
                                        .map(way -> List.<Answer>of(
                                                new Answer.Words(
                                                        "method", way.method().word()),
                                                new Answer.Words("move", way.move()),
                                                Answer.of(
                                                        "error",
                                                        Unit.DEG.toInside(
                                                                way.error().nearest()),
                                                        Unit.DEG),
                                                new Answer.Words("why", way.why())))
                                        .toList()))
                        .showing(IndexWays.LEAST_TROUBLE.of(
                                asked.number("divisions"), "", asked.value("ratio"), asked.value("divisions"))));
    }
}
