package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import setwright.geometry.plane.Point2;

/**
 * The order in which a list of holes is gone through. It starts with the first; the way from hole to hole is the shortest of
 * the order as written and of going to the nearest that is left, with crossings taken out of both (two-opt, after Croes
 * 1958). The same holes in the same order always give the same answer; it is not always the shortest there is.
 */
final class HoleOrder {
    private static final double SHORTER = 1e-6;

    /** Beyond so many holes crossings are looked for so often at most. */
    private static final int ROUNDS = 40;

    private final List<Point2> places;

    private HoleOrder(List<Point2> places) {
        this.places = places;
    }

    /** The numbers of the places, counted from 0, in order. */
    static List<Integer> of(List<Point2> places) {
        HoleOrder order = new HoleOrder(places);
        int[] written = IntStream.range(0, places.size()).toArray();
        int[] best = order.uncrossed(written.clone());
        int[] near = order.uncrossed(order.nearest());
        int[] shortest = order.length(near) < order.length(best) + SHORTER ? near : best;
        return IntStream.of(order.length(shortest) < order.length(written) - SHORTER ? shortest : written)
                .boxed()
                .toList();
    }

    private int[] nearest() {
        List<Integer> left =
                new ArrayList<>(IntStream.range(0, places.size()).boxed().toList());
        int[] order = new int[places.size()];
        int at = 0;
        for (int i = 0; i < order.length; i++) {
            int next = i == 0 ? 0 : nearest(left, at);
            order[i] = next;
            left.remove(Integer.valueOf(next));
            at = next;
        }
        return order;
    }

    private int nearest(List<Integer> left, int from) {
        int best = left.get(0);
        for (int one : left) {
            if (distance(one, from) < distance(best, from) - SHORTER) {
                best = one;
            }
        }
        return best;
    }

    /** Stretches run the other way round as long as that makes the way shorter; the first hole stays first. */
    private int[] uncrossed(int[] order) {
        boolean better = true;
        for (int round = 0; better && round < ROUNDS; round++) {
            better = false;
            for (int i = 1; i < order.length - 1; i++) {
                for (int j = i + 1; j < order.length; j++) {
                    if (gain(order, i, j) > SHORTER) {
                        reverse(order, i, j);
                        better = true;
                    }
                }
            }
        }
        return order;
    }

    private double gain(int[] order, int i, int j) {
        double before = distance(order[i - 1], order[i]);
        double after = distance(order[i - 1], order[j]);
        if (j + 1 < order.length) {
            before += distance(order[j], order[j + 1]);
            after += distance(order[i], order[j + 1]);
        }
        return before - after;
    }

    private static void reverse(int[] order, int from, int to) {
        for (int i = from, j = to; i < j; i++, j--) {
            int kept = order[i];
            order[i] = order[j];
            order[j] = kept;
        }
    }

    private double length(int[] order) {
        double sum = 0;
        for (int i = 1; i < order.length; i++) {
            sum += distance(order[i - 1], order[i]);
        }
        return sum;
    }

    private double distance(int a, int b) {
        return places.get(a).distance(places.get(b));
    }
}
