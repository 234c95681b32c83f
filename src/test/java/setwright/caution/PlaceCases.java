package setwright.caution;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.caution.Cases.Case;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.UndecidedHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.shop.Drill;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.ShopRow;
import setwright.shop.Vise;

/** For every check of location, order and batch a job that it fires on and one that it nearly fires on. */
final class PlaceCases {
    private PlaceCases() {}

    static List<Case> all() {
        return List.of(
                new Case("off-tolerance", position("0.136"), position("0.144")),
                new Case("related-features-split", split("0.107"), split("0.109")),
                new Case("holding-face-gone", fromEdge(Pattern.Datum.LEFT_LOW), fromEdge(Pattern.Datum.RIGHT_LOW)),
                new Case("rough-face-as-datum", bright(Side.FRONT), bright(Side.BACK)),
                new Case("will-not-clean-up", facedTo("39.6"), facedTo("39.5")),
                new Case("loads-wrong-way-round", twoSides(ZeroFinding.JAW_AND_STOP), twoSides(ZeroFinding.EDGES)),
                new Case("drill-wanders", deepHole("0.194"), deepHole("0.196")),
                new Case("drill-grabs", sheet("1.9"), sheet("2.1")),
                new Case("tap-bottoms", Cases.drilledTo(26), Cases.drilledTo(26.5)),
                new Case("tap-off-axis", tappedIn("s2"), tappedIn("s1")),
                new Case("z-lost", blindTo("0.042"), blindTo("0.043")),
                new Case("xy-lost", headMoved(Machine.Column.ROUND), headMoved(Machine.Column.DOVETAIL)),
                new Case("order-broken", ordered("h2-tap", "h2-drill"), ordered("h2-drill", "h2-tap")),
                new Case("near-drill-size", tapDrill("6.6"), tapDrill("6.8")),
                new Case("not-in-shop", owned(0), owned(1)),
                new Case("overweight", heavy("80"), heavy("78")),
                new Case("material-hazard", hazard("dust: suck it up"), hazard(null)),
                new Case("thermal", warm("0.008"), warm("0.009")),
                new Case("shop-row-changed", carrying(SmallShop.viseWithFirm("12 kN")), carrying(moreVises())));
    }

    /** The bearing block with this position tolerance of its reamed hole; its errors come to 0.0702 mm, 0.0429 of them drift alone. */
    static Bench position(String mm) {
        return Bench.of(SmallJobs.bearingBlock(mm));
    }

    private static Hole placed(String id, @Nullable String mm, Pattern place) {
        return new Hole(
                id,
                "10 thru",
                Side.TOP,
                Hole.Make.PLAIN,
                Size.of(SmallShop.length("10")),
                null,
                null,
                null,
                place,
                mm == null ? null : SmallShop.length(mm + " mm"),
                GotBy.TOOL);
    }

    static Pattern at(Pattern.Datum from, String u, String v) {
        return new Pattern.Points(
                from, List.of(new Pattern.Place(SmallShop.length(u + " mm"), SmallShop.length(v + " mm"))));
    }

    private static Job job(Feature... features) {
        return SmallJobs.job("Bracket", 12, SmallMaterials.STEEL, SmallJobs.block("82", "52", "40"), features);
    }

    private static SetUp setUp(String id, Side up, ZeroFinding datum, Operation... operations) {
        return new SetUp(id, id, Plannable.inked(up), 0, ViseHolding.pencilled(), datum, List.of(operations));
    }

    private static Operation step(String feature, Operation.Kind kind) {
        return Operation.pencilled(feature + "-" + kind.name().toLowerCase(Locale.ROOT), kind, List.of(feature));
    }

    private static Bench of(Job job, SetUp... setUps) {
        return Bench.of(job.withPlan(job.plan().withSetUps(List.of(setUps))));
    }

    /** Two holes of the top, drilled in two loadings; these are out by 2 √(0.0127² + 0.0127²) = 0.0359 mm. */
    static Bench split(String mm) {
        return twoHoles(mm, "s2");
    }

    /** The reamed hole of the bearing block, drilled at one height of the head and reamed 10 mm higher. */
    static Bench headMoved(Machine.Column column) {
        Bench bench = Cases.block().in(SmallShop.shop().with(List.of(SmallShop.onColumn(column))));
        double drilled = bench.plan().room().operation("h1-drill").orElseThrow().kneeHeight();
        return bench.mm("h1-drill", OperationField.KNEE_HEIGHT, drilled)
                .mm("h1-ream", OperationField.KNEE_HEIGHT, drilled + 10);
    }

    /** Two holes, the first drilled in s1 and the other there too or in a loading of its own. */
    static Bench twoHoles(@Nullable String mm, String second) {
        Job job = job(
                placed("h1", mm, at(Pattern.Datum.CENTRE, "-20", "0")),
                placed("h2", mm, at(Pattern.Datum.CENTRE, "20", "0")));
        Operation[] first = {step("h1", Operation.Kind.SPOT), step("h1", Operation.Kind.DRILL)};
        Operation[] other = {step("h2", Operation.Kind.SPOT), step("h2", Operation.Kind.DRILL)};
        return second.equals("s1")
                ? of(job, setUp("s1", Side.TOP, ZeroFinding.EDGES, first[0], first[1], other[0], other[1]))
                : of(
                        job,
                        setUp("s1", Side.TOP, ZeroFinding.EDGES, first),
                        setUp("s2", Side.TOP, ZeroFinding.EDGES, other));
    }

    /** A hole on top that is placed from a corner, and a left face that is cut in a later set-up. */
    private static SetUp up(String id, String title, Side side) {
        return new SetUp(id, title, Plannable.inked(side), 0, new UndecidedHolding(), ZeroFinding.EDGES, List.of());
    }

    static Bench fromEdge(Pattern.Datum from) {
        return fromEdge(from, "0.3");
    }

    static Bench fromEdge(Pattern.Datum from, @Nullable String position) {
        Face left = new Face("f1", "face to 80", Side.LEFT, Size.of(SmallShop.length("80")), null, GotBy.MEASURED);
        return Bench.of(job(placed("h1", position, at(from, "15", "15")), left))
                .with(job -> job.withPlan(job.plan()
                        .withSetUps(List.of(up("s1", "Top side up", Side.TOP), up("s2", "Left side up", Side.LEFT)))));
    }

    /** One side bright, the other five as sawn. */
    static Bench bright(Side side) {
        return Bench.of(SmallJobs.withFaces(SmallJobs.bearingBlock(), Map.of(side, FaceState.BRIGHT_DRAWN)));
    }

    /** Sawn 40 high at least. */
    static Bench facedTo(String mm) {
        return Bench.of(job(SmallJobs.face("f1", mm)));
    }

    /** A hole off the middle on top, then one on the front. */
    static Bench twoSides(ZeroFinding second) {
        Hole front = new Hole(
                "h2",
                "10 thru",
                Side.FRONT,
                Hole.Make.PLAIN,
                Size.of(SmallShop.length("10")),
                null,
                null,
                null,
                at(Pattern.Datum.CENTRE, "15", "0"),
                null,
                GotBy.TOOL);
        return of(
                job(placed("h1", null, at(Pattern.Datum.CENTRE, "-20", "0")), front),
                setUp("s1", Side.TOP, ZeroFinding.EDGES),
                setUp("s2", Side.FRONT, second));
    }

    /** Through 61 mm: the drill goes 65.0 mm deep, with its point and 1 mm of over-run. */
    static Bench deepHole(String mm) {
        return Bench.of(SmallJobs.job(
                "Post",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "60"),
                placed("h1", mm, SmallJobs.middle())));
    }

    /** A sheet, up to 1 mm thicker than this. */
    static Bench sheet(String mm) {
        return Bench.of(SmallJobs.job(
                        "Shim",
                        1,
                        SmallMaterials.STEEL,
                        SmallJobs.block("82", "52", mm),
                        SmallJobs.plain("h1", "10 thru", "10", SmallJobs.middle())))
                .ink(ViseField.VISE, SmallShop.VISE);
    }

    /** Four threads, drilled in the first set-up and tapped in this one. */
    static Bench tappedIn(String setUp) {
        Operation tap = step("h2", Operation.Kind.TAP);
        Operation spot = step("h2", Operation.Kind.SPOT);
        Operation drill = step("h2", Operation.Kind.DRILL);
        Job job = job(SmallJobs.tapped("h2", "4x M8 thru", null));
        return setUp.equals("s1")
                ? of(job, setUp("s1", Side.TOP, ZeroFinding.EDGES, spot, drill, tap))
                : of(
                        job,
                        setUp("s1", Side.TOP, ZeroFinding.EDGES, spot, drill),
                        setUp("s2", Side.TOP, ZeroFinding.EDGES, tap));
    }

    /** A blind hole of 12 mm, so much either way, below a face that is cut in the same set-up; 0.02 √2 = 0.0283 mm. */
    static Bench blindTo(String eitherWay) {
        double out = Double.parseDouble(eitherWay);
        Size depth = new Size(
                SmallShop.length("12"), SmallShop.length((12 - out) + " mm"), SmallShop.length((12 + out) + " mm"));
        Hole hole = new Hole(
                "h1",
                "10 x 12 deep",
                Side.TOP,
                Hole.Make.PLAIN,
                Size.of(SmallShop.length("10")),
                null,
                null,
                depth,
                SmallJobs.middle(),
                null,
                GotBy.TOOL);
        return Bench.of(job(SmallJobs.face("f1", "38"), hole));
    }

    /** The threads of the bearing block made by these two in this order. */
    static Bench ordered(String first, String second) {
        List<Operation> two = List.of(first, second).stream()
                .map(id -> step("h2", id.endsWith("tap") ? Operation.Kind.TAP : Operation.Kind.DRILL))
                .toList();
        return of(SmallJobs.bearingBlock(), setUp("s1", Side.TOP, ZeroFinding.EDGES, two.get(0), two.get(1)));
    }

    static Bench tapDrill(String size) {
        return Cases.block().ink("h2-drill", OperationField.CUTTER, "drill-hss-jobber-" + size);
    }

    /** The threads drilled by a stub drill of which the shop has so many. */
    static Bench owned(int count) {
        Drill stub = SmallShop.shop().row(SmallCutters.STUB_6_8, Drill.class).orElseThrow();
        return Cases.block()
                .in(SmallShop.shop().with(List.of(SmallCutters.owned(stub, count))))
                .ink("h2-drill", OperationField.CUTTER, SmallCutters.STUB_6_8);
    }

    /** A block of 160 x 100, up to 1 mm higher than this: 10 kg of steel are 79.6 mm high. */
    static Bench heavy(String mm) {
        return Bench.of(SmallJobs.job(
                "Base",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("160", "100", mm),
                SmallJobs.plain("h1", "10 thru", "10", SmallJobs.middle())));
    }

    /** The bearing block of a steel that bites so. */
    static Bench hazard(@Nullable String bites) {
        Material steel =
                SmallShop.shop().row(SmallMaterials.STEEL, Material.class).orElseThrow();
        return Cases.block().in(SmallShop.shop().with(List.of(SmallMaterials.withHazard(steel, bites))));
    }

    /** 38 mm of steel grow 38 x 0.0000115 x 10 = 0.0044 mm. */
    static Bench warm(String eitherWay) {
        return Bench.of(job(GripCases.faced("38", eitherWay)));
    }

    /** The bearing block with its own copy of this row. */
    static Bench carrying(ShopRow row) {
        return Cases.block().with(job -> job.withPlan(job.plan().withRows(List.of(row))));
    }

    private static Vise moreVises() {
        return SmallShop.owned(SmallShop.viseWithFirm("15 kN"), 3);
    }
}
