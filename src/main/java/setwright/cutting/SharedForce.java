package setwright.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The force on one tooth whose fellows stand out farther or less than it does, by the chip that even teeth would take.
 *
 * @param law of a millimetre of edge
 * @param heights how the teeth stand at heights that come round along the edge; the mean over them counts
 * @param tooth which of them
 */
public record SharedForce(EdgeForce law, List<UnevenTeeth> heights, int tooth) implements EdgeForce {
    /** So many heights stand for a wave. */
    public static final int HEIGHTS = 8;

    public SharedForce {
        heights = List.copyOf(heights);
    }

    /** The force on the first tooth of a roughing end mill; all of them are alike. */
    public static SharedForce waved(EdgeForce law, int teeth, double depth) {
        List<UnevenTeeth> found = new ArrayList<>();
        for (int i = 0; i < HEIGHTS; i++) {
            found.add(wave(teeth, depth, i));
        }
        return new SharedForce(law, found, 0);
    }

    /** How the teeth of a roughing end mill stand at one of its heights. */
    public static UnevenTeeth wave(int teeth, double depth, int height) {
        return UnevenTeeth.waved(teeth, depth, (height + 0.5) / HEIGHTS);
    }

    /** The force on one of teeth that do not stand out alike, waved ones among them. */
    static SharedForce of(EdgeForce law, UnevenTeeth teeth, int tooth) {
        if (law instanceof SharedForce waved) {
            List<UnevenTeeth> both =
                    waved.heights.stream().map(one -> one.and(teeth)).toList();
            return new SharedForce(waved.law, both, tooth);
        }
        return new SharedForce(law, List.of(teeth), tooth);
    }

    @Override
    public Parts at(double chip) {
        double tangential = 0;
        double normal = 0;
        double along = 0;
        for (UnevenTeeth teeth : heights) {
            double share = teeth.chip(tooth, chip);
            if (share > 0) {
                Parts parts = law.at(share);
                tangential += parts.tangential();
                normal += parts.normal();
                along += parts.along();
            }
        }
        int count = heights.size();
        return new Parts(tangential / count, normal / count, along / count);
    }

    @Override
    public Kind kind() {
        return Kind.SHARED;
    }
}
