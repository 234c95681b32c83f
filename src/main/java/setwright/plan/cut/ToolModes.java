package setwright.plan.cut;

import java.util.Optional;
import setwright.plan.cut.RingingCut.Ends;
import setwright.quantity.Band;
import setwright.rigidity.stability.FirstMode;
import setwright.rigidity.stability.Mode;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.MeasuredMode;
import setwright.shop.TapTest;

/**
 * How the tip of an operation's tool rings: as it was measured where somebody tapped it, else as beam and springs let
 * expect.
 */
record ToolModes(Mode x, Mode y, Ends soft, Ends stiff, boolean measured) {
    /** A tap test counts for a tool that stands out as far as this, mm (common practice). */
    private static final double AS_FAR = 1;

    static ToolModes of(CutQuestion question) {
        return tapped(question).map(ToolModes::measured).orElseGet(() -> estimated(question));
    }

    static Optional<TapTest> tapped(CutQuestion question) {
        double stickOut = question.operation().stickOut().value().inside();
        return question.rows().all(TapTest.class).stream()
                .filter(test -> test.machine().equals(question.rows().machine().id())
                        && test.holder().equals(question.operation().holder().value())
                        && test.cutter().equals(question.cutter().id())
                        && Math.abs(test.stickOut().inside() - stickOut) <= AS_FAR)
                .findFirst();
    }

    static ToolModes measured(TapTest test) {
        return new ToolModes(mode(test.x()), mode(test.y()), Ends.AS_EXPECTED, Ends.AS_EXPECTED, true);
    }

    private static Mode mode(MeasuredMode mode) {
        return Mode.ofHertz(
                mode.frequency().inside(),
                mode.damping().inside(),
                mode.stiffness().inside());
    }

    private static ToolModes estimated(CutQuestion question) {
        Mounting mounting = question.mounting();
        Mode mode = FirstMode.of(mounting.expected(), density(question.cutter()), holderMass(question));
        double tip = mounting.beam().stickOut();
        Band gives = mounting.springs().compliance(mounting.beam(), tip, tip);
        Band damping = FirstMode.damping();
        return new ToolModes(
                mode,
                mode,
                new Ends(gives.expected() / gives.high(), damping.low()),
                new Ends(gives.expected() / gives.low(), damping.high()),
                false);
    }

    /** kg/mm³; of bodies with tipped or inserted edges it is that of steel. */
    private static double density(Cutter cutter) {
        return switch (cutter.form()) {
            case FACE_MILL, FLY_CUTTER, SHELL_MILL, SLITTING_SAW, FORM_CUTTER, BORING_BAR -> FirstMode.STEEL_DENSITY;
            default -> FirstMode.density(cutter.material());
        };
    }

    /** Of the holder's body below the spindle nose, as a rod of its nose, kg. */
    private static double holderMass(CutQuestion question) {
        return question.rows()
                .holder(question.operation().holder().value())
                .map(ToolModes::mass)
                .orElse(0.0);
    }

    private static double mass(Holder holder) {
        double nose = holder.noseDiameter().inside();
        return FirstMode.STEEL_DENSITY
                * Math.PI
                / 4
                * nose
                * nose
                * holder.projection().inside();
    }
}
