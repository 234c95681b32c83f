package setwright.cutting;

/**
 * A drill in its hole.
 *
 * @param diameter D, mm
 * @param feed f per turn, mm
 * @param webRatio length of the chisel edge over the diameter: 0.18 plain, 0.03 split point
 * @param pilot diameter of the hole that is already there, mm; 0 in solid work
 * @param wear W: 1 sharp, 1.3 in normal use, 1.5 very dull (from memory)
 */
public record DrillCut(double diameter, double feed, double webRatio, double pilot, double wear) {
    public DrillCut {
        if (!(diameter > 0 && feed > 0 && webRatio >= 0 && webRatio < 1 && wear > 0)) {
            throw new IllegalArgumentException(
                    "A drill has a diameter and a feed above 0 mm, a web ratio from 0 to below 1"
                            + " and a wear factor above 0, not " + diameter + ", " + feed + ", " + webRatio + " and "
                            + wear + ".");
        }
        if (!(pilot >= 0 && pilot < diameter)) {
            throw new IllegalArgumentException(
                    "A pilot is smaller than its drill of " + diameter + " mm, not " + pilot + " mm.");
        }
    }

    /** A plain sharp drill in solid work. */
    public static DrillCut plain(double diameter, double feed) {
        return new DrillCut(diameter, feed, ChiselFactors.STANDARD_WEB, 0, 1);
    }

    public DrillCut withWebRatio(double ratio) {
        return new DrillCut(diameter, feed, ratio, pilot, wear);
    }

    public DrillCut withPilot(double hole) {
        return new DrillCut(diameter, feed, webRatio, hole, wear);
    }

    public DrillCut withWear(double factor) {
        return new DrillCut(diameter, feed, webRatio, pilot, factor);
    }

    public ChiselFactors chisel() {
        return ChiselFactors.of(webRatio, pilot / diameter);
    }
}
