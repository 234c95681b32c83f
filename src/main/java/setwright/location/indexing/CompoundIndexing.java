package setwright.location.indexing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * Two circles of one face added or taken away. Exact where the denominator of the turn divides the least common multiple
 * of the two; near it else.
 */
public final class CompoundIndexing {
    public static final Procedure COMPOUND = new Procedure(
            "two circles of one plate",
            List.of(
                    "a / H1 ± b / H2 = R / N, both circles on the same face",
                    "the crank moves a spaces of H1; the plate with the crank moves b spaces of H2, by the rear pin",
                    "both the same way first: nothing reverses, so no backlash comes in; then the fewest spaces"),
            Unit.NONE,
            Source.of("Machinery's Reference Series 97 (Jones, 1912) chapter 1; tables of Machinery's Handbook 27,"
                    + " p. 1995"));

    /** Turns of the plate beyond which a move is nothing but more counting. */
    private static final int MOST_TURNS = 2;

    private static final Comparator<TwoCircles> LEAST_TROUBLE = Comparator.comparing((TwoCircles way) -> !way.same())
            .thenComparing(TwoCircles::spaces)
            .thenComparing(TwoCircles::plate)
            .thenComparing(way -> -Math.max(way.firstCircle(), way.secondCircle()));

    /** A move that spans several divisions, which come in turn as long as the two have no common factor. */
    public record InSteps(int steps, TwoCircles move, Rational error) {}

    private CompoundIndexing() {}

    /** Every way to make the turn exactly, the least trouble first. */
    public static List<TwoCircles> exact(Rational turns, IndexPlates plates) {
        List<TwoCircles> ways = new ArrayList<>();
        pairs(plates, pair -> {
            for (long b = -MOST_TURNS * pair.second(); b <= MOST_TURNS * pair.second(); b++) {
                Rational a = turns.minus(Rational.of(b, pair.second())).times(pair.first());
                if (b != 0 && a.isWhole() && a.signum() != 0) {
                    pair.way(a.numerator().longValueExact(), b).ifPresent(ways::add);
                }
            }
        });
        return ways.stream().sorted(LEAST_TROUBLE).toList();
    }

    /** The way that comes nearest to a turn. */
    public static Optional<TwoCircles> nearest(Rational turns, IndexPlates plates) {
        return inSteps(turns, List.of(1), plates).map(InSteps::move);
    }

    /** The way that comes nearest when every move spans k divisions, k without a common factor with their number. */
    public static Optional<InSteps> nearestInSteps(int divisions, IndexHead head) {
        List<Integer> steps = new ArrayList<>();
        for (int k = 1; k <= Math.max(1, divisions / 2); k++) {
            if (Divisions.common(k, divisions) == 1) {
                steps.add(k);
            }
        }
        return inSteps(head.turns(divisions, 1), steps, head.plates());
    }

    /** Whole numbers throughout: the error is (p k H1 H2 - q (a H2 + b H1)) / (q H1 H2) for a turn of p / q. */
    private static Optional<InSteps> inSteps(Rational turns, List<Integer> steps, IndexPlates plates) {
        long p = turns.numerator().longValueExact();
        long q = turns.denominator().longValueExact();
        Best best = new Best();
        for (int k : steps) {
            pairs(plates, pair -> {
                best.look(pair, p * k, q, k);
            });
        }
        return Optional.ofNullable(best.found);
    }

    private static final class Best {
        private @Nullable InSteps found;
        private double least = Double.POSITIVE_INFINITY;

        void look(Pair pair, long p, long q, int k) {
            long whole = (long) pair.first() * pair.second();
            for (long b = -pair.second(); b <= pair.second(); b++) {
                long rest = p * whole - q * b * pair.first();
                long a = Math.round((double) rest / ((double) q * pair.second()));
                double off = Math.abs((double) (rest - q * a * pair.second()) / ((double) q * whole));
                if (a == 0 || b == 0 || off >= least) {
                    continue;
                }
                Optional<TwoCircles> way = pair.way(a, b);
                if (way.isPresent()) {
                    least = off;
                    found = new InSteps(k, way.get(), way.get().inTurns().minus(Rational.of(p, q)));
                }
            }
        }
    }

    /** Two circles of a face, the smaller first. */
    private record Pair(int first, int second, String plate) {
        /** a of the first and b of the second; what goes forward is named first. Empty where the crank would go back. */
        Optional<TwoCircles> way(long a, long b) {
            if (a < 0 && b < 0) {
                return Optional.empty();
            }
            return Optional.of(
                    a > 0
                            ? new TwoCircles(a, first, Math.abs(b), second, b > 0, plate)
                            : new TwoCircles(b, second, -a, first, false, plate));
        }
    }

    private static void pairs(IndexPlates plates, Consumer<Pair> look) {
        for (PlateFace face : plates.faces()) {
            List<Integer> circles = face.circles().stream().distinct().sorted().toList();
            for (int i = 0; i < circles.size(); i++) {
                for (int j = i + 1; j < circles.size(); j++) {
                    look.accept(new Pair(circles.get(i), circles.get(j), face.name()));
                }
            }
        }
    }
}
