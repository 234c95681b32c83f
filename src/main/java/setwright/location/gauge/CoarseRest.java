package setwright.location.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The fewest coarse blocks for every multiple of the coarse step. */
final class CoarseRest {
    private static final int NONE = Integer.MAX_VALUE / 2;

    private final List<Integer> blocks;
    private final int coarse;
    private final int[][] fewest;

    private CoarseRest(List<Integer> blocks, int coarse, int[][] fewest) {
        this.blocks = blocks;
        this.coarse = coarse;
        this.fewest = fewest;
    }

    /** @param blocks multiples of the coarse step, each there once */
    static CoarseRest of(List<Integer> blocks, int coarse) {
        int reach = blocks.stream().mapToInt(block -> block / coarse).sum();
        int[][] fewest = new int[blocks.size() + 1][reach + 1];
        Arrays.fill(fewest[0], NONE);
        fewest[0][0] = 0;
        for (int i = 0; i < blocks.size(); i++) {
            int block = blocks.get(i) / coarse;
            for (int sum = 0; sum <= reach; sum++) {
                int with = sum < block ? NONE : fewest[i][sum - block] + 1;
                fewest[i + 1][sum] = Math.min(fewest[i][sum], with);
            }
        }
        return new CoarseRest(blocks, coarse, fewest);
    }

    /** How many blocks; negative where it cannot be built. */
    int pieces(int steps) {
        int sum = steps / coarse;
        boolean within = steps % coarse == 0 && sum < fewest[0].length;
        return within && fewest[blocks.size()][sum] < NONE ? fewest[blocks.size()][sum] : -1;
    }

    List<Integer> blocks(int steps) {
        List<Integer> taken = new ArrayList<>();
        int sum = steps / coarse;
        for (int i = blocks.size(); i > 0; i--) {
            if (fewest[i][sum] < fewest[i - 1][sum]) {
                taken.add(blocks.get(i - 1));
                sum -= blocks.get(i - 1) / coarse;
            }
        }
        return taken;
    }
}
