package setwright.caution;

import static setwright.caution.SmallShop.length;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Pattern;
import setwright.job.Size;
import setwright.job.Title;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** Jobs of the small shop: the bearing block of a telescope mount, and two of its neighbours. */
public final class SmallJobs {
    private SmallJobs() {}

    /** Sawn mild steel 82 x 52 x 40 with +1/-0, faced to 38; 12 H7 in the middle, 4x M8 thru on 56 x 30; 12 off. */
    public static Job bearingBlock() {
        return bearingBlock("0.2");
    }

    /** The same with another position tolerance of the reamed hole. */
    static Job bearingBlock(String position) {
        return job(
                "Bearing block",
                12,
                SmallMaterials.STEEL,
                block("82", "52", "40"),
                face("f1", "38"),
                reamed("h1", "12 H7 thru", "12", position),
                tapped("h2", "4x M8 thru", null));
    }

    /** The same with the four holes blind: 12 mm of full thread. */
    static Job blindBlock() {
        return job(
                "Bearing block, blind",
                12,
                SmallMaterials.STEEL,
                block("82", "52", "40"),
                face("f1", "38"),
                reamed("h1", "12 H7 thru", "12", "0.2"),
                tapped("h2", "4x M8 x 12 deep", "12 mm"));
    }

    /** A cover of aluminium with four plain holes. */
    static Job cover() {
        return job(
                "Cover",
                4,
                SmallMaterials.ALUMINIUM,
                block("100", "60", "25"),
                face("f1", "24"),
                plain("h1", "4x 6.6 thru", "6.6", grid("76", "36")));
    }

    /** A foot of mild steel with two holes. */
    static Job foot() {
        return job(
                "Foot",
                2,
                SmallMaterials.STEEL,
                block("60", "40", "30"),
                face("f1", "29"),
                plain("h1", "10 thru", "10", middle()));
    }

    static List<Job> everyday() {
        return List.of(bearingBlock(), cover(), foot());
    }

    static Job job(String part, int numberOff, String material, Block block, Feature... features) {
        JobPlan plan = new JobPlan(
                new Title(part, "TM-104", "B"),
                UnitSystem.METRIC,
                numberOff,
                material,
                block,
                new MachineAsItStands(SmallShop.MACHINE, List.of(SmallShop.VISE), null),
                List.of(features),
                List.of(),
                List.of());
        return new Job(plan, JobRecord.EMPTY);
    }

    /** The same with these faces of its blank in another state. */
    static Job withFaces(Job job, Map<Side, FaceState> faces) {
        Block block = (Block) job.plan().blank();
        return job.withPlan(job.plan().withBlank(new Block(block.length(), block.depth(), block.height(), faces)));
    }

    /** Sawn, each size with +1/-0. */
    static Block block(String length, String depth, String height) {
        return new Block(sawn(length), sawn(depth), sawn(height), Map.of());
    }

    private static Size sawn(String nominal) {
        return new Size(length(nominal), length(nominal), length((Double.parseDouble(nominal) + 1) + " mm"));
    }

    static Face face(String id, String across) {
        double nominal = Double.parseDouble(across);
        Size size = new Size(length(across), length((nominal - 0.1) + " mm"), length((nominal + 0.1) + " mm"));
        return new Face(id, "face to " + across, Side.TOP, size, null, GotBy.MEASURED);
    }

    static Hole reamed(String id, String note, String size, String position) {
        return new Hole(
                id,
                note,
                Side.TOP,
                Hole.Make.REAMED,
                Size.of(length(size)),
                null,
                "H7",
                null,
                middle(),
                length(position + " mm"),
                GotBy.TOOL);
    }

    static Hole tapped(String id, String note, @Nullable String depth) {
        return new Hole(
                id,
                note,
                Side.TOP,
                Hole.Make.TAPPED,
                Size.of(length("8 mm")),
                "M8",
                null,
                depth == null ? null : Size.of(length(depth)),
                grid("56", "30"),
                null,
                GotBy.TOOL);
    }

    static Hole plain(String id, String note, String size, Pattern place) {
        return new Hole(
                id, note, Side.TOP, Hole.Make.PLAIN, Size.of(length(size)), null, null, null, place, null, GotBy.TOOL);
    }

    static Pattern grid(String spacingU, String spacingV) {
        Pattern.Place middle = new Pattern.Place(length("0 mm"), length("0 mm"));
        return new Pattern.Grid(Pattern.Datum.CENTRE, middle, 2, 2, length(spacingU), length(spacingV));
    }

    /** A spindle speed as typed. */
    public static Typed<SpindleSpeed> speed(String text) {
        return SmallShop.READING.spindleSpeed(text);
    }

    /** A feed as typed. */
    public static Typed<Speed> feed(String text) {
        return SmallShop.READING.feed(text);
    }

    /** A length as typed. */
    public static Typed<Length> mm(String text) {
        return length(text);
    }

    static Pattern middle() {
        return new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(length("0 mm"), length("0 mm"))));
    }
}
