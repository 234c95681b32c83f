package setwright.caution.check;

import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.ToolMaterial;

/** An end mill judged by its stick-out, where so many waves fit between two teeth that no speed can be aimed at. */
record SlenderTool(Operations.In in, OperationCut cut) {
    /** A pass deeper than this share of the diameter is roughing. */
    private static final double ROUGHING = 0.5;

    /** Stick-out over diameter, from which on it is said (common practice). */
    private record Slender(double note, double caution) {
        static Slender of(ToolMaterial material) {
            return switch (material) {
                case HSS -> new Slender(4, 6);
                case CARBIDE -> new Slender(5, 8);
            };
        }
    }

    Finding look() {
        Cutter cutter = in.cutterRow().orElseThrow();
        double diameter = cutter.diameter().inside();
        double slender = in.operation().stickOut().value().inside() / diameter;
        Slender limits = Slender.of(cutter.material());
        boolean roughing = cut.depth() > ROUGHING * diameter;
        Margin margin = Margin.of(
                ChatterLikely.SLUG,
                in.place("tool"),
                "Stick-out of " + in.cutter() + " in diameters",
                Figure.atMost(roughing ? limits.note() : limits.caution(), slender, Unit.NONE));
        if (!margin.figure().holds()) {
            return Finding.fails(
                    margin, Severity.CAUTION, message(slender, margin.figure().limit(), roughing));
        }
        return slender > limits.note()
                ? Finding.fails(margin, Severity.NOTE, message(slender, limits.note(), false))
                : Finding.holds(margin);
    }

    private String message(double slender, double limit, boolean roughing) {
        Words words = new Words(in.plan());
        String pass = roughing ? " and roughs deeper than half of it" : "";
        return in.cutter() + " stands out " + words.printing().factor(slender) + " times its diameter" + pass + " "
                + in.at() + "; from " + words.printing().factor(limit) + " times on it rings. Not predictable at this"
                + " speed" + waves(words) + ": less stick-out, or take lighter passes.";
    }

    private String waves(Words words) {
        Stability stability = cut.stability();
        return stability == null
                ? ""
                : " (about " + words.printing().factor(stability.waves().inside()) + " waves between teeth)";
    }
}
