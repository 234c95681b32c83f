package setwright.caution.check;

import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.quantity.Band;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/**
 * A pass held against the depth that is quiet at its speed. Where the modes are an estimate, beyond what is expected is a
 * note, and only beyond the far end of the band a caution.
 */
record RingingPass(Operations.In in, OperationCut cut, Stability stability) {
    Finding look() {
        Band quiet = stability.depth();
        if (quiet == null) {
            throw new IllegalStateException(
                    "Nothing can be predicted of " + in.operation().id() + ".");
        }
        boolean measured = stability.basis() == Stability.Basis.MEASURED;
        Margin margin = Margin.of(
                        ChatterLikely.SLUG,
                        in.place("tool"),
                        "Depth of " + in.cutter() + " at its speed",
                        Figure.atMost(measured ? quiet.expected() : quiet.high(), cut.depth(), Unit.MM))
                .between(quiet);
        if (!margin.figure().holds()) {
            return Finding.fails(
                    margin, Severity.CAUTION, message(margin.figure().limit(), quiet));
        }
        return cut.depth() > quiet.expected()
                ? Finding.fails(margin, Severity.NOTE, message(quiet.expected(), quiet))
                : Finding.holds(margin);
    }

    private String message(double limit, Band quiet) {
        Words words = new Words(in.plan());
        return in.cutter() + " cuts " + words.length(cut.depth()) + " deep at "
                + speed(words, cut.speed().inside())
                + " " + in.at() + "; " + source(words, quiet) + " it is quiet there down to " + words.length(limit)
                + ", "
                + words.printing().factor(stability.waves().inside()) + " waves between teeth. " + wayOut(words);
    }

    private String source(Words words, Band quiet) {
        return switch (stability.basis()) {
            case MEASURED -> "as it was tapped";
            case ESTIMATED ->
                "by an estimate (" + words.length(quiet.low()) + " to " + words.length(quiet.high()) + ")";
        };
    }

    private String wayOut(Words words) {
        Double advice = stability.quietSpeed();
        return advice == null
                ? "No speed of this machine near it is quiet so deep: take less depth, or less stick-out."
                : "Quiet so deep at the nearest: " + speed(words, advice) + ".";
    }

    private static String speed(Words words, double inside) {
        return words.of(Measure.SPINDLE_SPEED, inside);
    }
}
