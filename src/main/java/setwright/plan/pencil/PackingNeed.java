package setwright.plan.pencil;

import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.plan.part.Lying;
import setwright.plan.part.MadeFrom;
import setwright.plan.part.MilledDepth;
import setwright.quantity.Angle;
import setwright.quantity.Typed;

/**
 * What packing has to do in a vise: lift what is cut above the jaws, leave room below for tools that go through, and
 * stand clear of every hole; mm.
 */
final class PackingNeed {
    /** The finished face stands this much above the jaw top where there is a choice (common practice). */
    private static final double ABOVE_JAW = 3;

    /** Room under a through hole beyond its size, for point or lead (common practice: a tap wants most). */
    static final double UNDER_HOLE_SHARE = 0.8;

    static final double UNDER_HOLE = 1;

    /** Room under a slot or window that goes through (common practice). */
    static final double UNDER_OPENING = 2;

    /** Sideways room from a hole to a parallel. */
    private static final double BESIDE_HOLE = 1;

    private final double lift;
    private final double under;
    private final double thickest;
    private final double jawHeight;

    PackingNeed(Drafting drafting, double jawHeight, Lying lying, Side up) {
        this.jawHeight = jawHeight;
        double finished = lying.upright().leastMm();
        double through = 0;
        double room = Double.POSITIVE_INFINITY;
        for (Feature feature : drafting.on(up)) {
            switch (feature.kind()) {
                case FACE ->
                    finished = Math.min(finished, ((Face) feature).across().leastMm());
                case HOLE -> {
                    Hole hole = (Hole) feature;
                    if (hole.through()) {
                        double size = hole.size().nominal().inside();
                        through = Math.max(through, UNDER_HOLE_SHARE * size + UNDER_HOLE);
                        room = Math.min(room, jawToHole(hole, lying) - BESIDE_HOLE);
                    }
                }
            }
        }
        boolean opens = drafting.on(up).stream().anyMatch(CutAreas::through);
        double open = drafting.on(up).stream()
                .mapToDouble(feature -> overTheJaws(feature, lying))
                .max()
                .orElse(0);
        double low = drafting.job().plan().features().stream()
                .filter(feature -> MadeFrom.up(feature, drafting.job()) == up)
                .flatMap(feature ->
                        MilledDepth.level(feature, up, lying).stream().map(level -> level - underTheDisc(feature)))
                .min(Double::compare)
                .orElse(Double.POSITIVE_INFINITY);
        lift = Math.max(0, jawHeight + ABOVE_JAW + Math.max(open - finished, -low));
        under = opens ? Math.max(through, UNDER_OPENING) : through;
        thickest = room;
    }

    /** What hangs under a disc on an arbor; a seat cutter is one piece with its shank. */
    private static double underTheDisc(Feature feature) {
        return feature.kind() == Feature.Kind.WOODRUFF_SEAT ? 0 : MilledDepth.ARBOR_SCREW;
    }

    /** How deep a cut goes that runs out over a jaw; nought for one that stays between them. */
    private static double overTheJaws(Feature feature, Lying lying) {
        return switch (feature.kind()) {
            case STEP -> ((Step) feature).depth().nominal().inside();
            case SLOT -> acrossJaws((Slot) feature, lying);
            case FACE,
                    ARC_SLOT,
                    RADIUS_END,
                    POCKET,
                    PROFILE,
                    HOLE,
                    KEYSEAT,
                    WOODRUFF_SEAT,
                    T_SLOT,
                    DOVETAIL,
                    FLATS,
                    CHAMFER,
                    SLIT,
                    INCLINED_FACE,
                    DIVIDED -> 0;
        };
    }

    private static double acrossJaws(Slot slot, Lying lying) {
        Typed<Angle> angle = slot.place().angle();
        double turned = lying.quarterTurns() * Math.PI / 2 + (angle == null ? 0 : angle.inside());
        Size depth = slot.depth();
        boolean crosses = Math.abs(StrictMath.sin(turned)) > 0.1;
        return slot.open() && depth != null && crosses ? depth.nominal().inside() : 0;
    }

    private static double jawToHole(Hole hole, Lying lying) {
        double half = lying.across().nominal().inside() / 2;
        return lying.places(hole).stream()
                .mapToDouble(place ->
                        half - Math.abs(place.y()) - hole.size().nominal().inside() / 2)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether packing is wanted at all: the part on the bed would not do. */
    boolean wanted() {
        return lift > 0 || under > 0;
    }

    /** By how much a packing misses its purpose, mm; 0 where it does all it has to. */
    double shortfall(Packing packing) {
        double height = packing.height().inside();
        double low = Math.max(0, Math.max(lift, under) - height);
        double thick = Math.max(0, packing.thickness() - thickest);
        double noGrip = Math.max(0, height + 3 - jawHeight);
        return low + 2 * thick + 10 * noGrip;
    }
}
