package setwright.plan.pencil;

import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.plan.part.Lying;
import setwright.shop.Vise;

/**
 * What packing has to do in a vise: lift what is cut above the jaws, leave room below for tools that go through, and
 * stand clear of every hole; mm.
 */
final class PackingNeed {
    /** The finished face stands this much above the jaw top where there is a choice (common practice). */
    private static final double ABOVE_JAW = 3;

    /** Room under a through hole beyond its size, for point or lead (common practice: a tap wants most). */
    private static final double UNDER_HOLE_SHARE = 0.8;

    private static final double UNDER_HOLE = 1;

    /** Sideways room from a hole to a parallel. */
    private static final double BESIDE_HOLE = 1;

    private final double lift;
    private final double under;
    private final double thickest;
    private final double jawHeight;

    PackingNeed(Drafting drafting, Vise vise, Lying lying, Side up) {
        jawHeight = vise.jawHeight().inside();
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
        lift = Math.max(0, jawHeight + ABOVE_JAW - finished);
        under = through;
        thickest = room;
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
