package setwright.file;

import static setwright.file.SampleShop.mm;

import java.util.List;
import java.util.Map;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.DrawnVise;
import setwright.job.Face;
import setwright.job.FaceState;
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
import setwright.job.Standing;
import setwright.job.Title;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** The bearing block of the telescope mount: a sawn block, faced, with a reamed bore and four tapped holes. */
final class Samples {
    private static final Reading READING = new Reading(UnitSystem.METRIC);

    private Samples() {}

    static Shop shop() {
        return SampleShop.shop();
    }

    static Job bearingBlock() {
        return new Job(plan(), record());
    }

    private static JobPlan plan() {
        Size length = sawn("82 mm", "83 mm");
        return new JobPlan(
                new Title("Bearing block", "TM-014", "B"),
                UnitSystem.METRIC,
                12,
                "mild-steel",
                new Block(
                        length,
                        sawn("52 mm", "53 mm"),
                        sawn("40 mm", "41 mm"),
                        Map.of(Side.TOP, FaceState.SAWN, Side.LEFT, FaceState.SAWN, Side.FRONT, FaceState.MACHINED)),
                new MachineAsItStands("knee-mill", List.of("vise-6in"), "2025-03-01"),
                features(),
                List.of(setUp()),
                SampleShop.rows());
    }

    static Size sawn(String least, String greatest) {
        return new Size(mm(least), mm(least), mm(greatest));
    }

    private static List<Feature> features() {
        Pattern middle = new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(mm("0 mm"), mm("0 mm"))));
        Pattern corners = new Pattern.Grid(
                Pattern.Datum.CENTRE, new Pattern.Place(mm("0 mm"), mm("0 mm")), 2, 2, mm("56 mm"), mm("30 mm"));
        return List.of(
                new Face("face1", "", Side.TOP, Size.of(mm("38 mm")), mm("3.2 um"), GotBy.MEASURED),
                new Hole(
                        "hole1",
                        "\u00d812 H7 through, in the middle",
                        Side.TOP,
                        Hole.Make.REAMED,
                        new Size(mm("12 mm"), mm("12 mm"), mm("12.018 mm")),
                        null,
                        "H7",
                        null,
                        middle,
                        mm("0.1 mm"),
                        GotBy.TOOL),
                new Hole(
                        "hole2",
                        "4x M8 thru on 56 x 30",
                        Side.TOP,
                        Hole.Make.TAPPED,
                        Size.of(mm("8 mm")),
                        "M8",
                        null,
                        null,
                        corners,
                        null,
                        GotBy.TOOL));
    }

    private static SetUp setUp() {
        ViseHolding holding = new ViseHolding(
                Plannable.inked("vise-6in"),
                Plannable.inked(ViseHolding.JawSeat.INBOARD),
                Plannable.inked("parallels-10"),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.inked(ViseHolding.GripAsked.FIRM),
                Plannable.inked(mm("-5 mm")));
        return new SetUp(
                "s1",
                "First side",
                Plannable.inked(Side.TOP),
                0,
                holding,
                ZeroFinding.JAW_AND_STOP,
                List.of(
                        face(),
                        Operation.pencilled("o2", Operation.Kind.SPOT, List.of("hole1", "hole2")),
                        Operation.pencilled("o3", Operation.Kind.DRILL, List.of("hole1")),
                        Operation.pencilled("o4", Operation.Kind.REAM, List.of("hole1")),
                        Operation.pencilled("o5", Operation.Kind.DRILL, List.of("hole2")),
                        Operation.pencilled("o6", Operation.Kind.TAP, List.of("hole2"))));
    }

    private static Operation face() {
        return new Operation(
                "o1",
                Operation.Kind.FACE,
                List.of("face1"),
                Plannable.inked("end-mill-16"),
                Plannable.inked("collet-r8-16"),
                new Plannable.Measured<>(mm("1-1/2 in"), "Ada", "2025-03-14"),
                Plannable.inked(mm("1 mm")),
                Plannable.pencilled(),
                Plannable.inked(mm("0.2 mm")),
                Plannable.inked(Operation.LastPass.ONE),
                Plannable.inked(READING.time("45 min")),
                Plannable.inked(Operation.Direction.CONVENTIONAL),
                Plannable.inked(Operation.Coolant.BRUSHED_OIL),
                Plannable.inked(Operation.Method.TABLE_FEED),
                Plannable.inked(READING.spindleSpeed("660 rev/min")),
                Plannable.inked(READING.feed("120 mm/min")),
                Plannable.pencilled(),
                "the belt was on 660");
    }

    private static JobRecord record() {
        return new JobRecord(
                List.of(new JobRecord.Tick("s1/o1", 1, "Ada", "2025-03-14T10:15")),
                List.of(new JobRecord.ReadingTaken("hole1", 1, "12.006 mm", "Ada", "2025-03-14T10:40")),
                List.of(new JobRecord.Remark(
                        "r1", "s1", "", "Jaw is \"marked\" \u2014 stone it\n", "Ben", "2025-03-14")),
                List.of(new JobRecord.Acceptance(
                        "tool-springs/s1/o1/face1",
                        JobRecord.Role.LEAD,
                        "Ben",
                        "roughing only",
                        "2025-03-14",
                        "0.021")),
                List.of(new JobRecord.SignOff(JobRecord.Sign.RELEASED_FOR_FIRST_PART, "Ben", "2025-03-14", "c0ffee")),
                List.of(new JobRecord.Used("o1", "speed", "650 rev/min", "Ada", "2025-03-14")));
    }

    /** The sample with a pencil's hand in it; the numbers are not worked out. */
    static DrawnUp drawnUp() {
        Job job = bearingBlock();
        Operation face = job.plan().setUps().get(0).operations().get(0);
        DrawnVise vise = new DrawnVise(
                inked("vise-6in"),
                inked(ViseHolding.JawSeat.INBOARD),
                inked("parallels-10"),
                pencilled(mm("20 mm")),
                pencilled(mm("0 mm")),
                inked(ViseHolding.GripAsked.FIRM),
                inked(mm("-5 mm")));
        DrawnOperation first = drawn(face.id(), Standing.INKED, face.features(), inked(mm("1 mm")));
        DrawnOperation added = drawn("o7", Standing.PENCILLED, List.of("hole2"), pencilled(mm("2 mm")));
        return new DrawnUp(
                job,
                List.of(new DrawnSetUp(
                        "s1",
                        "First side",
                        Standing.INKED,
                        inked(Side.TOP),
                        0,
                        vise,
                        ZeroFinding.JAW_AND_STOP,
                        List.of(first, added))));
    }

    private static DrawnOperation drawn(
            String id, Standing standing, List<String> features, Drawn<Typed<Length>> depth) {
        return new DrawnOperation(
                id,
                standing,
                Operation.Kind.FACE,
                features,
                inked("end-mill-16"),
                inked("collet-r8-16"),
                new Drawn<>(mm("1-1/2 in"), Standing.MEASURED),
                depth,
                pencilled(mm("12 mm")),
                pencilled(mm("0.2 mm")),
                pencilled(Operation.LastPass.ONE),
                pencilled(READING.time("60 min")),
                inked(Operation.Direction.CONVENTIONAL),
                inked(Operation.Coolant.BRUSHED_OIL),
                pencilled(Operation.Method.TABLE_FEED),
                inked(READING.spindleSpeed("660 rev/min")),
                inked(READING.feed("120 mm/min")),
                pencilled(mm("150 mm")),
                "the belt was on 660");
    }

    private static <T> Drawn<T> inked(T value) {
        return new Drawn<>(value, Standing.INKED);
    }

    private static <T> Drawn<T> pencilled(T value) {
        return new Drawn<>(value, Standing.PENCILLED);
    }
}
