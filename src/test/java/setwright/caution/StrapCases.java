package setwright.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import setwright.geometry.Side;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Holding;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.RoundBar;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Step;
import setwright.job.StopAt;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.Tilt;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.shop.RotaryTable;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.SoftJaws;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.TNut;

/** A plate of 300 x 150 x 25 under two straps over its ends, and what else is held by no plain vise. */
final class StrapCases {
    private StrapCases() {}

    /** Straps 125 x 32 x 16, T-nuts 18 high in slots of 16, studs M12 of these lengths and a set of 160 mm. */
    static Shop shop(String... studs) {
        List<ShopRow> rows = new ArrayList<>(List.of(
                new Strap(
                        "strap-125",
                        "Straps 125",
                        Strap.Form.PLAIN,
                        SmallShop.length("125 mm"),
                        SmallShop.length("32 mm"),
                        SmallShop.length("16 mm"),
                        SmallShop.length("14 mm"),
                        4,
                        SmallShop.KEPT,
                        SmallShop.SOURCE),
                new TNut(
                        "t-nuts",
                        "T-nuts M12",
                        SmallShop.length("16 mm"),
                        "M12",
                        SmallShop.length("25 mm"),
                        SmallShop.length("18 mm"),
                        SmallShop.KEPT,
                        SmallShop.SOURCE),
                new SoftJaws(
                        "soft-jaws",
                        "Soft jaws 6 in",
                        SmallShop.length("152 mm"),
                        SmallShop.length("44 mm"),
                        SmallShop.length("25 mm"),
                        "aluminium",
                        SmallShop.KEPT,
                        SmallShop.SOURCE)));
        rows.add(studs("studs-m12", "Studs M12", studs));
        rows.add(studs("studs-m12-more", "Studs M12, more", "80 mm", "160 mm"));
        return SmallShop.shop().with(rows);
    }

    private static Stud studs(String id, String name, String... lengths) {
        return new Stud(
                id,
                name,
                "M12",
                SmallShop.length("16 mm"),
                SmallShop.lengths(lengths),
                "8.8",
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    private static <T> Plannable<T> ink(T value) {
        return Plannable.inked(value);
    }

    /** Over an end of the plate, half across it; its stud 32 from the pad and its heel 64 behind that. */
    private static Strapping strap(String id, String u, String toward) {
        Strapping bare = Strapping.pencilled(id);
        bare = StrapField.STRAP.write(bare, ink("strap-125"));
        bare = StrapField.STUD.write(bare, ink("studs-m12"));
        bare = StrapField.U.write(bare, ink(SmallShop.length(u)));
        bare = StrapField.V.write(bare, ink(SmallShop.length("75 mm")));
        bare = StrapField.TOWARD.write(bare, ink(SmallShop.READING.angle(toward)));
        bare = StrapField.PAD_TO_STUD.write(bare, ink(SmallShop.length("32 mm")));
        bare = StrapField.STUD_TO_HEEL.write(bare, ink(SmallShop.length("64 mm")));
        bare = StrapField.HEEL_OVER.write(bare, ink(SmallShop.length("0 mm")));
        return StrapField.TORQUE.write(bare, ink(SmallShop.READING.torque("42 N·m")));
    }

    static Strapping left() {
        return strap("left", "18 mm", "180 deg");
    }

    /** The plate with a hole of 6.6 this far from its middle, under such a left strap and one over its right end. */
    static Bench plate(Strapping left, double u, double v) {
        Pattern place = new Pattern.Points(
                Pattern.Datum.CENTRE,
                List.of(new Pattern.Place(SmallShop.length(u + " mm"), SmallShop.length(v + " mm"))));
        return plate(left, SmallJobs.plain("h1", "6.6 thru", "6.6", place));
    }

    static Bench plate(Strapping left, Feature... features) {
        Strapping right = StrapField.STUD.write(strap("right", "282 mm", "0 deg"), ink("studs-m12-more"));
        TableHolding table = TableHolding.pencilled().withStraps(List.of(left, right));
        Job job = SmallJobs.job("Plate", 1, SmallMaterials.STEEL, SmallJobs.block("300", "150", "25"), features);
        return Bench.of(held(job, Side.TOP, table)).in(shop("80 mm", "100 mm"));
    }

    private static Job held(Job job, Side up, Holding holding) {
        return job.withPlan(job.plan().withSetUps(List.of(setUp("s1", up, holding))));
    }

    private static SetUp setUp(String id, Side up, Holding holding) {
        return new SetUp(id, "First", ink(up), 0, holding, ZeroFinding.EDGES, List.of());
    }

    private static <T> Bench with(StrapField<T> field, T value) {
        return plate(field.write(left(), ink(value)), 0, 0);
    }

    static Bench mm(StrapField<setwright.quantity.Typed<setwright.quantity.Length>> field, double mm) {
        return with(field, SmallShop.length(mm + " mm"));
    }

    static Bench torque(String torque) {
        return with(StrapField.TORQUE, SmallShop.READING.torque(torque));
    }

    /** A bolt in the place of the left strap, through a hole of 13 that the plate has as received or is yet to get. */
    private static Bench bolted(boolean received) {
        Strapping bolt =
                StrapField.STRAP.write(StrapField.BY.write(left(), ink(Strapping.By.BOLT)), ink(ViseHolding.NONE));
        Pattern place = new Pattern.Points(
                Pattern.Datum.CENTRE,
                List.of(new Pattern.Place(SmallShop.length("-132 mm"), SmallShop.length("0 mm"))));
        Bench bench = plate(bolt, SmallJobs.plain("h1", "13 thru", "13", place));
        return received ? bench.with(job -> job.withPlan(job.plan().withReceived(List.of("h1")))) : bench;
    }

    /** The stud this far from the pad, the heel 96 from it. */
    private static Bench studAt(double mm) {
        Strapping strap = StrapField.PAD_TO_STUD.write(left(), ink(SmallShop.length(mm + " mm")));
        return plate(StrapField.STUD_TO_HEEL.write(strap, ink(SmallShop.length(96 - mm + " mm"))), 0, 0);
    }

    /** A hole beside the left strap, this far across from the middle of its pad, which is 16 wide to either side. */
    static Bench holeBeside(double v) {
        return plate(left(), -132, v);
    }

    /**
     * A hole 14 from the stud along and 22.5 across, its chuck over the nut, with studs of this length; the nut's top is
     * 60 over the table, and the drill goes 3 below it.
     */
    static Bench chuckOver(String stud, double out) {
        Strapping strap = StrapField.U.write(left(), ink(SmallShop.length("12 mm")));
        strap = StrapField.PAD_TO_STUD.write(strap, ink(SmallShop.length("20 mm")));
        return plate(strap, -144, 22.5)
                .in(shop(stud))
                .ink("h1-drill", OperationField.HOLDER, SmallHolders.KEYED)
                .mm("h1-drill", OperationField.STICK_OUT, out);
    }

    /** A block with a step along its left edge, and a pin 5 under its top against that edge. */
    static Bench stepBeside(String depth) {
        Step step = new Step(
                "st1",
                "step 10 x " + depth,
                Side.TOP,
                Edge.LEFT,
                size("10 mm"),
                size(depth + " mm"),
                null,
                null,
                GotBy.MEASURED);
        Job job = SmallJobs.job("Shoe", 1, SmallMaterials.STEEL, exact("82", "52", "40"), step);
        StopAt stop = new StopAt("stop1", ViseHolding.NONE, Edge.LEFT, SmallShop.length("26 mm"));
        ViseHolding vise = ViseHolding.pencilled().withStops(List.of(stop));
        return Bench.of(held(job, Side.TOP, vise));
    }

    private static Size size(String text) {
        return Size.of(SmallShop.length(text));
    }

    private static setwright.job.Block exact(String length, String depth, String height) {
        return new setwright.job.Block(size(length + " mm"), size(depth + " mm"), size(height + " mm"), Map.of());
    }

    /** A bar of 50 that stands in the vise and is faced. */
    static Bench standingBar(ViseHolding.GripAsked grip) {
        Job block = SmallJobs.job(
                "Stud", 1, SmallMaterials.STEEL, SmallJobs.block("50", "50", "40"), SmallJobs.face("f1", "38"));
        Job bar = block.withPlan(block.plan().withBlank(new RoundBar(size("50 mm"), size("40 mm"), Map.of())));
        return Bench.of(bar).in(shop("80 mm")).ink(ViseField.GRIP, grip);
    }

    /** Two feet side by side, their widths this much apart. */
    static Bench gang(String depth, String most) {
        Size across = new Size(
                SmallShop.length(depth + " mm"), SmallShop.length(depth + " mm"), SmallShop.length(most + " mm"));
        Job job = SmallJobs.job(
                "Foot",
                2,
                SmallMaterials.STEEL,
                new setwright.job.Block(size("60 mm"), across, size("30 mm"), Map.of()),
                SmallJobs.plain("h1", "10 thru", "10", SmallJobs.middle()));
        return Bench.of(job).in(shop("80 mm")).ink(ViseField.PARTS, 2);
    }

    /** A block on a rotary table of 200 whose lock holds this, with a step of 4 at 40 from its middle. */
    static Bench indexed(String lock) {
        return onRotary(DeviceHolding.pencilled(DeviceHolding.On.ROTARY_TABLE), rotary("200", lock));
    }

    /** The same block on one of two rotary tables; beside it there is room for straps on the larger alone. */
    static Bench lyingOn(String rotary) {
        DeviceHolding pencilled = DeviceHolding.pencilled(DeviceHolding.On.ROTARY_TABLE);
        return onRotary(
                DeviceField.DEVICE.write(pencilled, ink("rotary-" + rotary)),
                rotary("80", "400 N·m"),
                rotary("200", "400 N·m"));
    }

    private static Bench onRotary(DeviceHolding holding, RotaryTable... tables) {
        Step step = new Step(
                "st1", "step 10 x 4", Side.TOP, Edge.LEFT, size("10 mm"), size("4 mm"), null, null, GotBy.MEASURED);
        Job job = SmallJobs.job("Shoe", 1, SmallMaterials.STEEL, exact("82", "52", "20"), step);
        return Bench.of(held(job, Side.TOP, holding)).in(shop("80 mm", "100 mm").with(List.of(tables)));
    }

    private static RotaryTable rotary(String diameter, String lock) {
        return new RotaryTable(
                "rotary-" + diameter,
                "Rotary table " + diameter,
                SmallShop.length(diameter + " mm"),
                SmallShop.length("90 mm"),
                null,
                90,
                SmallShop.READING.angle("0.01 deg"),
                SmallShop.length("12 mm"),
                4,
                SmallShop.READING.torque(lock),
                SmallShop.READING.mass("15 kg"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** A foot drilled from either side, the head swivelled for the top. */
    static Bench swivelled(boolean first) {
        Hole top = SmallJobs.plain("h1", "10 thru", "10", SmallJobs.middle());
        Hole bottom = new Hole(
                "h2",
                "6.6 x 8 deep",
                Side.BOTTOM,
                Hole.Make.PLAIN,
                size("6.6 mm"),
                null,
                null,
                size("8 mm"),
                SmallJobs.grid("40", "20"),
                null,
                GotBy.TOOL);
        Job job = SmallJobs.job("Foot", 2, SmallMaterials.STEEL, exact("60", "40", "30"), top, bottom);
        SetUp tilted = setUp("s1", Side.TOP, ViseHolding.pencilled())
                .withTilt(new Tilt(Tilt.Axis.Y, SmallShop.READING.angle("10 deg"), Tilt.By.HEAD));
        SetUp square = setUp("s2", Side.BOTTOM, ViseHolding.pencilled());
        List<SetUp> order = first ? List.of(tilted, square) : List.of(square, tilted);
        return Bench.of(job.withPlan(job.plan().withSetUps(order)));
    }

    static Cases.Case cutterMeetsClamp() {
        return new Cases.Case("cutter-meets-clamp", holeBeside(21), holeBeside(26));
    }

    static Cases.Case cutterMeetsStop() {
        return new Cases.Case("cutter-meets-stop", stepBeside("4.8"), stepBeside("4.4"));
    }

    static Cases.Case holderMeetsClamp() {
        return new Cases.Case("holder-meets-clamp", chuckOver("80 mm", 62), chuckOver("80 mm", 72));
    }

    static List<Cases.Case> ofRoom() {
        return List.of(
                new Cases.Case("stud-in-path", chuckOver("125 mm", 72), chuckOver("80 mm", 72)),
                new Cases.Case("clamp-on-the-cut", holeBeside(15), holeBeside(23)));
    }

    static List<Cases.Case> ofGrip() {
        return List.of(
                new Cases.Case("clamp-over-air", mm(StrapField.U, -2), mm(StrapField.U, 1)),
                new Cases.Case("no-slot-under-stud", mm(StrapField.V, 95), mm(StrapField.V, 77)),
                new Cases.Case("no-hole-for-bolt", bolted(false), bolted(true)),
                new Cases.Case("heel-low", mm(StrapField.HEEL_OVER, -2), mm(StrapField.HEEL_OVER, 0)),
                new Cases.Case("stud-near-heel", studAt(50), studAt(47)),
                new Cases.Case(
                        "stud-too-short",
                        plate(left(), 0, 0).in(shop("70 mm")),
                        plate(left(), 0, 0).in(shop("75 mm"))),
                new Cases.Case("slot-overloaded", torque("90 N·m"), torque("84 N·m")),
                new Cases.Case(
                        "round-on-two-lines",
                        standingBar(ViseHolding.GripAsked.SNUG),
                        standingBar(ViseHolding.GripAsked.HARD)),
                new Cases.Case("unequal-gang", gang("40", "40.1"), gang("40", "40.01")),
                new Cases.Case("index-not-locked", indexed("40 N·m"), indexed("200 N·m")));
    }

    static Cases.Case headStillTilted() {
        return new Cases.Case("head-still-tilted", swivelled(true), swivelled(false));
    }
}
