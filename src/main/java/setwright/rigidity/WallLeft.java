package setwright.rigidity;

import java.util.List;
import setwright.cutting.CutForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingForce;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * What the spring of a cutter leaves on the wall that it cuts, normal to it, mm: above nought metal is left on, below it
 * the cutter went in. The edge leaves each height of the wall at its own moment, with the force of that moment.
 *
 * @param atBottom at the tip of the cutter
 * @param atTop at the top of the cut
 * @param farthest the height that is left out most, with its sign
 */
public record WallLeft(double atBottom, double atTop, double farthest) {
    public static final Procedure LEFT = new Procedure(
            "left on the wall by the spring of the cutter",
            List.of(
                    "the force across the feed at the moment when the edge stands on each height of the wall",
                    "times the give of the cutter on its springs at that height, the force at half the depth",
                    "+ away from the wall, metal stays on; - into the wall"),
            Unit.MM,
            Source.of(
                    "from memory: a conventional cut pulls into the wall, a climb cut away from it; force over the turn"
                            + " and stepped beam as above"));

    /** The wall that a conventional cut leaves, and one side of a slot. */
    public static final double CONVENTIONAL = 0;

    /** The wall that a climb cut leaves, and the other side of a slot. */
    public static final double CLIMB = Math.PI;

    private static final int HEIGHTS = 8;
    private static final double BESIDE = 1e-6;

    /**
     * What is left under a cut.
     *
     * @param wall angle of the wall, {@link #CONVENTIONAL} or {@link #CLIMB}
     * @param load where the force acts, from the holder's face, mm
     */
    public static WallLeft of(MillingForce force, MillingCut cut, double wall, MountedTool tool, double load) {
        double lag = cut.cutter().lag(cut.axialDepth());
        double tip = Math.min(
                Math.max(wall, cut.engagement().start() + BESIDE),
                cut.engagement().exit() - BESIDE);
        double out = tool.beam().stickOut();
        double toward = wall == CONVENTIONAL ? 1 : -1;
        double[] left = new double[HEIGHTS + 1];
        double farthest = 0;
        for (int i = 0; i <= HEIGHTS; i++) {
            CutForce now = force.at(tip + lag * i / HEIGHTS);
            double place = out - cut.axialDepth() * i / HEIGHTS;
            left[i] = -toward * now.cross() * tool.compliance(place, load).total();
            farthest = Math.abs(left[i]) > Math.abs(farthest) ? left[i] : farthest;
        }
        return new WallLeft(left[0], left[HEIGHTS], farthest);
    }

    /** How much farther out one end of the wall is than the other, mm. */
    public double taper() {
        return atTop - atBottom;
    }
}
