package setwright.cutting;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * The cuts that bring a bored hole to size: rough ones of equal depth, then measured, half of what is left, measured, the
 * rest, and one more without infeed. Diameters, mm.
 */
public final class TrialCuts {
    public static final Table RULE = new Table(
            "trial cuts",
            "rough, measure, half of what is left, measure, the rest, a spring pass",
            Unit.MM,
            Source.of("common practice"));

    private TrialCuts() {}

    /**
     * One cut.
     *
     * @param from diameter before it
     * @param to diameter that it leaves
     */
    public record TrialCut(Kind kind, double from, double to) {
        /** On the radius. */
        public double depth() {
            return (to - from) / 2;
        }

        /** Whether the bore is measured before the head is set for it. */
        public boolean measuredBefore() {
            return kind == Kind.HALF || kind == Kind.LAST;
        }
    }

    /** What a cut is for. */
    public enum Kind {
        ROUGH,
        /** Half of what is left, so that the head can be trusted for the rest. */
        HALF,
        LAST,
        /** Without infeed: takes what the bar gave. */
        SPRING
    }

    /**
     * What is wanted.
     *
     * @param deepest of a rough cut, on the radius
     * @param finish stock that the rough cuts leave on the radius; nought: the rough cuts go to size
     * @param spring whether a cut without infeed follows
     */
    public record Wanted(double before, double size, double deepest, double finish, boolean spring) {}

    public static List<TrialCut> of(Wanted wanted) {
        List<TrialCut> cuts = new ArrayList<>();
        double roughed = Math.max(wanted.before(), wanted.size() - 2 * wanted.finish());
        rough(cuts, wanted.before(), roughed, wanted.deepest());
        if (roughed < wanted.size()) {
            double half = (roughed + wanted.size()) / 2;
            cuts.add(new TrialCut(Kind.HALF, roughed, half));
            cuts.add(new TrialCut(Kind.LAST, half, wanted.size()));
        }
        if (wanted.spring()) {
            cuts.add(new TrialCut(Kind.SPRING, wanted.size(), wanted.size()));
        }
        return List.copyOf(cuts);
    }

    private static void rough(List<TrialCut> cuts, double from, double to, double deepest) {
        int count = (int) Math.ceil((to - from) / 2 / deepest - 1e-9);
        for (int i = 0; i < count; i++) {
            cuts.add(new TrialCut(Kind.ROUGH, from + i * (to - from) / count, from + (i + 1) * (to - from) / count));
        }
    }
}
