package setwright.location.indexing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.location.BoltCircle;
import setwright.location.FlatsOnRound;
import setwright.location.Place;
import setwright.location.gear.InvoluteCutters;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;
import setwright.quantity.gear.GearSizes;

/** Worked examples, each with its source and tolerance; a row without a tolerance of its own is exact. */
class IndexingExamplesTest {
    private static final double DOUBLE = 1e-12;

    static List<CsvRows.Row> rows() {
        return Moves.table("worked-examples.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_worked_example_comes_out_as_its_source_says(CsvRows.Row row) {
        Map<String, String> in = Moves.said(row.text("inputs"));
        String kind = in.get("kind");
        switch (kind) {
            case "simple" -> assertMove(row, in, head(in).turns(whole(in, "N"), 1));
            case "angle" ->
                assertMove(row, in, head(in).turns(Rational.of(60L * whole(in, "deg") + whole(in, "min"), 60)));
            case "block" -> assertBlock(row, in);
            case "nosimple" ->
                assertNone(
                        row,
                        in,
                        n -> PlainIndexing.exact(head(in).turns(n, 1), head(in)).isEmpty());
            case "nodiff" ->
                assertNone(
                        row,
                        in,
                        n -> PlainIndexing.exact(head(in).turns(n, 1), head(in)).isEmpty()
                                && DifferentialIndexing.ways(n, head(in)).isEmpty());
            case "differential" -> assertDifferential(row, in);
            case "bolt" -> assertBolt(row, in);
            case "cumerr" -> assertClosing(row, in);
            case "rotfeed" -> assertFeed(row, in);
            default ->
                assertThat(number(kind, in))
                        .as("%s: %s", row.text("id"), row.text("source"))
                        .isCloseTo(Moves.sum(row.text("expected")).nearest(), within(tolerance(row)));
        }
    }

    private static double tolerance(CsvRows.Row row) {
        return Math.max(DOUBLE, row.has("tolerance") ? row.number("tolerance") : 0);
    }

    private static double number(String kind, Map<String, String> in) {
        return switch (kind) {
            case "turnangle" -> head(in).degrees(Rational.ONE).nearest();
            case "holestep" -> 360.0 / whole(in, "circle");
            case "direct" ->
                new Crank(1, whole(in, "plate"))
                        .positions(whole(in, "N"))
                        .get(1)
                        .marks();
            case "compound" -> compound(in).times(seconds(in)).nearest();
            case "compoundclose" ->
                compound(in).times(360 * 3600 / 40).times(whole(in, "count")).nearest();
            case "twocircle" -> Moves.sum(in.get("moves")).nearest();
            case "sector" -> new CrankMove(0, whole(in, "holes"), 49, "").betweenArms();
            case "lead" ->
                lead(
                        in,
                        new GearTrain(List.of(
                                whole(in, "screw"), whole(in, "worm"), whole(in, "stud1"), whole(in, "stud2"))));
            case "bestlead" ->
                HelicalLead.nearest(Rational.decimal(in.get("want")), Rational.of(10), GearTrains.OF_TWELVE)
                        .lead()
                        .nearest();
            case "shortlead" ->
                HelicalLead.onSpindle(Rational.decimal(in.get("lead")), whole(in, "ratio"))
                        .nearest();
            case "machinelead" -> at(HelicalLead.MACHINE_LEAD.kernel(), d(in, "ratio"), d(in, "pitch"));
            case "swivel" -> Math.toDegrees(at(HelicalLead.SWIVEL.kernel(), d(in, "D"), d(in, "lead")));
            case "bevelroll" ->
                head(in).turns(Rational.decimal(in.get("roll_deg"))).nearest();
            case "wholedepth_p" -> at(GearSizes.DEPTH_14_5.kernel(), d(in, "p") / Math.PI);
            case "clearance_p" -> at(GearSizes.DEPTH_14_5.kernel(), d(in, "p") / Math.PI) - 2 * d(in, "p") / Math.PI;
            case "dp_from_od" -> (d(in, "N") + 2) / d(in, "OD");
            case "pd" -> at(GearSizes.PITCH.kernel(), d(in, "N"), 1 / d(in, "P"));
            case "wd" -> at(GearSizes.DEPTH_14_5.kernel(), 1 / d(in, "P"));
            case "wd_m" -> at(GearSizes.DEPTH_14_5.kernel(), d(in, "m"));
            case "od" -> at(GearSizes.OUTSIDE.kernel(), d(in, "N"), 1 / d(in, "P"));
            case "od_m" -> at(GearSizes.OUTSIDE.kernel(), d(in, "N"), d(in, "m"));
            case "add" ->
                (at(GearSizes.OUTSIDE.kernel(), 20, 1 / d(in, "P")) - at(GearSizes.PITCH.kernel(), 20, 1 / d(in, "P")))
                        / 2;
            case "cutter_dp" -> InvoluteCutters.number(d(in, "N"), InvoluteCutters.Numbering.DIAMETRAL_PITCH);
            case "cutter_m" -> InvoluteCutters.number(d(in, "N"), InvoluteCutters.Numbering.MODULE);
            case "virtual_bevel" ->
                at(GearSizes.VIRTUAL_BEVEL.kernel(), d(in, "N"), Math.toRadians(d(in, "pitch_angle")));
            case "chord" -> BoltCircle.chord(d(in, "D"), d(in, "n"));
            case "diafromchord" -> d(in, "chord") / BoltCircle.chord(1, d(in, "n"));
            case "radiusoffset" -> offset(in);
            case "af" -> 1 / FlatsOnRound.round(1, d(in, "n")) * d(in, "D");
            case "stock" -> FlatsOnRound.round(d(in, "AF"), d(in, "n"));
            case "flatdepth" -> at(FlatsOnRound.DEPTH.kernel(), d(in, "D"), d(in, "AF"));
            default -> throw new IllegalArgumentException(kind);
        };
    }

    private static double offset(Map<String, String> in) {
        return RotaryWork.offset(
                d(in, "R"),
                d(in, "cutter"),
                in.get("side").equals("outside") ? RotaryWork.Cut.OUTSIDE : RotaryWork.Cut.SLOT);
    }

    private static Rational compound(Map<String, String> in) {
        Rational error = Moves.sum(in.get("moves")).minus(head(in).turns(whole(in, "N"), whole(in, "k")));
        return error.signum() < 0 ? error.negate() : error;
    }

    private static long seconds(Map<String, String> in) {
        return 360 * 3600 / whole(in, "ratio");
    }

    private static double lead(Map<String, String> in, GearTrain train) {
        return Rational.of(whole(in, "machine_lead")).over(train.ratio()).nearest();
    }

    private static void assertMove(CsvRows.Row row, Map<String, String> in, Rational turns) {
        Map<String, String> expected = Moves.said(row.text("expected"));
        int circle = whole(in, "circle");
        IndexHead head = new IndexHead(
                whole(in, "ratio"), new IndexPlates(List.of(new PlateFace("one", List.of(circle)))), "", List.of());
        assertThat(PlainIndexing.exact(turns, head))
                .containsExactly(new CrankMove(whole(expected, "turns"), whole(expected, "holes"), circle, "one"));
    }

    private static void assertBlock(CsvRows.Row row, Map<String, String> in) {
        Map<String, String> expected = Moves.said(row.text("expected"));
        BlockIndexing.Way way =
                BlockIndexing.of(whole(in, "N"), whole(in, "k"), head(in)).orElseThrow();
        assertThat(way.move().turns()).isEqualTo(whole(expected, "turns"));
        assertThat(way.move().holes()).isEqualTo(whole(expected, "holes"));
        assertThat(way.move().circle()).isEqualTo(whole(in, "circle"));
        assertThat(way.steps()).isEqualTo(whole(expected, "workrevs"));
    }

    private static void assertNone(CsvRows.Row row, Map<String, String> in, java.util.function.IntPredicate none) {
        String[] range = in.get("N").split("\\.\\.");
        List<Integer> found = new ArrayList<>();
        for (int n = Integer.parseInt(range[0]); n <= Integer.parseInt(range[1]); n++) {
            if (none.test(n)) {
                found.add(n);
            }
        }
        List<Integer> printed = Arrays.stream(row.text("expected").split(" "))
                .map(Integer::valueOf)
                .toList();
        if (in.get("kind").equals("nodiff")) {
            assertThat(found).first().isEqualTo(printed.get(0));
        } else {
            assertThat(found).isEqualTo(printed);
        }
    }

    private static void assertDifferential(CsvRows.Row row, Map<String, String> in) {
        Map<String, String> expected = Moves.said(row.text("expected"));
        List<Integer> gears = in.get("stud1").isEmpty()
                ? List.of(whole(in, "spindle"), whole(in, "worm"))
                : List.of(whole(in, "spindle"), whole(in, "stud2"), whole(in, "stud1"), whole(in, "worm"));
        Rational x =
                Rational.of(40).minus(Rational.of((long) whole(in, "N") * whole(in, "holes"), whole(in, "circle")));
        DifferentialWay way = new DifferentialWay(
                new CrankMove(0, whole(in, "holes"), whole(in, "circle"), ""), x, new GearTrain(gears));
        assertThat(x).isEqualTo(Moves.fraction(expected.get("x")));
        assertThat(way.train().ratio()).isEqualTo(way.withCrank() ? x : x.negate());
        assertThat(way.idlers()).isEqualTo(whole(expected, "idlers"));
        assertThat(DifferentialIndexing.ways(whole(in, "N"), head(in))).anySatisfy(found -> {
            assertThat(found.plateTurns()).isEqualTo(x);
            assertThat(found.move().circle()).isEqualTo(whole(in, "circle"));
        });
    }

    private static void assertBolt(CsvRows.Row row, Map<String, String> in) {
        BoltCircle circle =
                BoltCircle.full(whole(in, "n"), d(in, "D"), new Place(0, 0), Math.toRadians(d(in, "start")));
        boolean corner = in.get("ref").equals("corner");
        double half = d(in, "D") / 2;
        for (String hole : row.text("expected").split("\\) ?")) {
            String[] cells = hole.split("[:( ]+");
            Place place = circle.places().get(Integer.parseInt(cells[0]) - 1);
            double x = corner ? half + place.x() : place.x();
            double y = corner ? half - place.y() : place.y();
            assertThat(x).isCloseTo(Double.parseDouble(cells[1]), within(row.number("tolerance")));
            assertThat(y).isCloseTo(Double.parseDouble(cells[2]), within(row.number("tolerance")));
        }
    }

    private static void assertClosing(CsvRows.Row row, Map<String, String> in) {
        Map<String, String> expected = Moves.said(row.text("expected"));
        Crank crank = Crank.rotary(90, Rational.of(whole(in, "res_arcsec"), 3600));
        int n = whole(in, "N");
        assertThat(crank.worst(n).times(360 * 3600).nearest()).isLessThanOrEqualTo(d(expected, "absolute_max_arcsec"));
        assertThat(crank.positions(n).get(n).error()).isEqualTo(Rational.ZERO);
    }

    private static void assertFeed(CsvRows.Row row, Map<String, String> in) {
        Map<String, String> expected = Moves.said(row.text("expected"));
        double turning = RotaryWork.turning(d(in, "feed") / 60, d(in, "R"));
        assertThat(Math.toDegrees(turning) * 60).isCloseTo(d(expected, "deg_per_min"), within(row.number("tolerance")));
        assertThat(turning * d(in, "ratio") * 60 / (2 * Math.PI))
                .isCloseTo(d(expected, "handwheel_rpm"), within(row.number("tolerance")));
    }

    private static IndexHead head(Map<String, String> in) {
        int ratio = in.containsKey("ratio") ? whole(in, "ratio") : 40;
        return IndexHead.of(ratio, Moves.plates(in.getOrDefault("family", "three-plate")));
    }

    private static int whole(Map<String, String> in, String key) {
        return Integer.parseInt(in.get(key));
    }

    private static double d(Map<String, String> in, String key) {
        return Double.parseDouble(in.get(key));
    }

    private static double at(java.util.function.ToDoubleFunction<double[]> kernel, double... values) {
        return kernel.applyAsDouble(values);
    }
}
