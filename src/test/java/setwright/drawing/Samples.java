package setwright.drawing;

import java.util.List;
import java.util.Map;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Title;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** The bearing block in a vise, planned, for looking at: 82 x 52 x 40, faced, one hole reamed, four tapped. */
public final class Samples {
    private static final Reading READ = new Reading(UnitSystem.METRIC);

    private Samples() {}

    /** The parallels stand clear of every hole. */
    public static Plan plan() {
        return plan(vise("parallels-0.125in", "1-1/4 in"), List.of());
    }

    /** Thick parallels, which the tapping drill meets. */
    public static Plan onThickParallels() {
        return plan(vise("parallels-0.500in", "1-1/4 in"), List.of());
    }

    /** The drill of the four holes put further out of its chuck. */
    public static Plan withDrillOut(String stickOut) {
        return plan(vise("parallels-0.125in", "1-1/4 in"), List.of(drillOut(stickOut)));
    }

    public static Plan on(String machine) {
        return Planner.plan(job(machine, vise("parallels-0.125in", "1-1/4 in"), List.of()), TestShop.shop());
    }

    public static Plan bottomed() {
        return plan(vise(ViseHolding.NONE, "0 in"), List.of());
    }

    /** A block so deep that the plan reaches into the T-slots before and behind the vise. */
    public static Plan deep() {
        Job job = job(TestShop.KNEE_MILL, vise("parallels-0.125in", "1-1/4 in"), List.of());
        Block deep = new Block(sawn("82"), sawn("64"), sawn("40"), Map.of());
        return Planner.plan(job.withPlan(job.plan().withBlank(deep)), TestShop.shop());
    }

    private static Plan plan(ViseHolding vise, List<Operation> operations) {
        return Planner.plan(job(TestShop.KNEE_MILL, vise, operations), TestShop.shop());
    }

    private static Job job(String machine, ViseHolding vise, List<Operation> operations) {
        SetUp first = new SetUp(
                "s1", "Top face and holes", Plannable.inked(Side.TOP), 0, vise, ZeroFinding.JAW_AND_STOP, operations);
        JobPlan plan = new JobPlan(
                new Title("Bearing block, declination axis", "TM-104", "B"),
                UnitSystem.METRIC,
                12,
                "mild-steel",
                new Block(sawn("82"), sawn("52"), sawn("40"), Map.of()),
                new MachineAsItStands(machine, List.of("vise-6in"), null),
                features(),
                List.of(first),
                List.of());
        return new Job(plan, JobRecord.EMPTY);
    }

    private static List<Feature> features() {
        Face face = new Face("f1", "38 high", Side.TOP, Size.of(mm("38")), null, GotBy.DIAL);
        Hole bore = new Hole(
                "h1",
                "12 H7 thru",
                Side.TOP,
                Hole.Make.REAMED,
                Size.of(mm("12")),
                null,
                "H7",
                null,
                new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(mm("0"), mm("0")))),
                mm("0.1"),
                GotBy.TOOL);
        Hole tapped = new Hole(
                "h2",
                "4x M8 thru",
                Side.TOP,
                Hole.Make.TAPPED,
                Size.of(mm("8")),
                "M8",
                null,
                null,
                new Pattern.Grid(Pattern.Datum.CENTRE, new Pattern.Place(mm("0"), mm("0")), 2, 2, mm("56"), mm("30")),
                null,
                GotBy.TOOL);
        return List.of(face, bore, tapped);
    }

    private static ViseHolding vise(String parallels, String height) {
        return new ViseHolding(
                Plannable.inked("vise-6in"),
                Plannable.pencilled(),
                Plannable.inked(parallels),
                Plannable.inked(mm(height)),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled());
    }

    private static Operation drillOut(String stickOut) {
        Operation plain = Operation.pencilled("h2-drill", Operation.Kind.DRILL, List.of("h2"));
        return new Operation(
                plain.id(),
                plain.kind(),
                plain.features(),
                plain.cutter(),
                plain.holder(),
                Plannable.inked(mm(stickOut)),
                plain.depth(),
                plain.width(),
                plain.finish(),
                plain.lastPass(),
                plain.toolLife(),
                plain.direction(),
                plain.coolant(),
                plain.method(),
                plain.speed(),
                plain.feed(),
                plain.kneeHeight(),
                "");
    }

    private static Size sawn(String size) {
        return new Size(mm(size), mm(size), mm(size + " + 1"));
    }

    private static Typed<Length> mm(String text) {
        return READ.length(text);
    }
}
