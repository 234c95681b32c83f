package setwright.cutting;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Speed;
import setwright.quantity.Typed;
import setwright.shop.Axis;
import setwright.shop.CuttingSpeed;
import setwright.shop.Machine;
import setwright.shop.ToolMaterial;

/**
 * What edge, chip, spindle and feed allow a milling cut; infinite where nothing bounds it.
 *
 * @param cuttingSpeed most that the edge stands, mm/s
 * @param thinnest largest chip below which an edge rubs, mm
 * @param thickest chip that a tooth takes, mm
 * @param drive what the machine has at the cutter
 * @param fastest that holder and cutter may turn, rad/s
 * @param roughness mean roughness that is asked of a wall, mm
 */
public record MillingBounds(
        double cuttingSpeed, double thinnest, double thickest, SpindleDrive drive, double fastest, double roughness) {
    /** Largest chip below which an edge rubs, mm (common practice). */
    private static final double RUBS_HSS = 0.005;

    private static final double RUBS_CARBIDE = 0.01;

    /** Of the starting feed of the table: what a tooth takes at most (common practice). */
    private static final double MOST_A_TOOTH = 1.5;

    /** By the rows of cutter, cutting speed and machine; nothing known of holder and drawing. */
    public static MillingBounds of(ToolMaterial tool, double diameter, CuttingSpeed row, Machine machine) {
        return new MillingBounds(
                row.speedHigh().inside(),
                thinnest(tool),
                MOST_A_TOOTH * row.feedAt(diameter),
                new SpindleDrive(machine),
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY);
    }

    /** Largest chip below which an edge rubs instead of cutting, mm. */
    public static double thinnest(ToolMaterial material) {
        return switch (material) {
            case HSS -> RUBS_HSS;
            case CARBIDE -> RUBS_CARBIDE;
        };
    }

    public MillingBounds notFasterThan(double most) {
        return new MillingBounds(cuttingSpeed, thinnest, thickest, drive, most, roughness);
    }

    public MillingBounds asFineAs(double meanRoughness) {
        return new MillingBounds(cuttingSpeed, thinnest, thickest, drive, fastest, meanRoughness);
    }

    /** How much of each a cut with plain edges uses up, at a speed of the spindle in rad/s, above 0. */
    public List<Limit> used(MillingLoad load, double speed) {
        return used(load, speed, load.cut().largestChip());
    }

    /**
     * How much of each a cut uses up.
     *
     * @param speed of the spindle, rad/s, above 0
     * @param thickest chip anywhere along the edges, mm: thicker than the feed gives where the edges are waved
     */
    public List<Limit> used(MillingLoad load, double speed, double thickest) {
        MillingCut cut = load.cut();
        double diameter = cut.cutter().diameter();
        List<Limit> limits = new ArrayList<>();
        limits.add(new Limit(LimitName.CUTTING_EDGE, SpeedAndFeed.cuttingSpeed(speed, diameter) / cuttingSpeed));
        limits.add(new Limit(LimitName.CHIP_LOAD, cut.largestChip() / this.thickest));
        limits.add(new Limit(LimitName.THIN_CHIP, thinnest / Math.max(thickest, 1e-9)));
        spindle(load, speed, limits);
        feed(cut, speed, limits);
        if (fastest < Double.POSITIVE_INFINITY) {
            limits.add(new Limit(LimitName.OVERSPEED, speed / fastest));
        }
        if (roughness < Double.POSITIVE_INFINITY) {
            double aTurn = cut.feedPerTooth() * cut.cutter().teeth();
            double left = Surface.meanRoughness(Surface.toothMarks(aTurn, diameter));
            limits.add(new Limit(LimitName.FINISH, left / roughness));
        }
        return limits;
    }

    /** A variable drive binds by its power above its base speed, by its torque below; a belt by the blows of the teeth. */
    private void spindle(MillingLoad load, double speed, List<Limit> limits) {
        limits.add(new Limit(LimitName.SPINDLE_POWER, load.meanPower(speed) / drive.whole()));
        if (drive.variable()) {
            limits.add(new Limit(LimitName.SPINDLE_TORQUE, load.meanTorque() / drive.torqueAt(speed)));
        }
        if (drive.belted()) {
            limits.add(new Limit(
                    LimitName.BELT, load.peakPower(speed) / (SpindleDrive.BELT_AT_A_MOMENT * drive.powerAt(speed))));
        }
    }

    private void feed(MillingCut cut, double speed, List<Limit> limits) {
        Axis axis = drive.machine().x();
        Typed<Speed> least = axis.feedLeast();
        Typed<Speed> greatest = axis.feedGreatest();
        if (least != null && greatest != null) {
            double feed = SpeedAndFeed.tableFeed(speed, cut.cutter().teeth(), cut.feedPerTooth());
            limits.add(new Limit(LimitName.FEED_RANGE, Math.max(feed / greatest.inside(), least.inside() / feed)));
        }
    }
}
