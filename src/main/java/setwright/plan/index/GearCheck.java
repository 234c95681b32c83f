package setwright.plan.index;

import java.util.Optional;
import setwright.job.Divided;
import setwright.job.Tooth;
import setwright.location.gear.InvoluteCutters;
import setwright.location.gear.ToothThickness;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.quantity.gear.GearSizes;

/**
 * Cutter, depth and what to measure of a gear.
 *
 * @param number of the cutter in a set of eight
 * @param half the half number that comes nearer; 0 where none does
 * @param spanned teeth in the span
 */
public record GearCheck(
        int number, double half, Worked wholeDepth, Worked pin, Worked overPins, int spanned, Worked span) {
    /** Empty below the teeth for which cutters are made. */
    static Optional<GearCheck> of(Divided gear, Tooth tooth) {
        int teeth = gear.count();
        if (teeth < InvoluteCutters.LEAST_TEETH) {
            return Optional.empty();
        }
        double pitch = tooth.diametralPitch();
        InvoluteCutters.Numbering numbering =
                pitch == 0 ? InvoluteCutters.Numbering.MODULE : InvoluteCutters.Numbering.DIAMETRAL_PITCH;
        String from = gear.id() + "/tooth";
        Given module = Given.of("module", tooth.module().inside(), Unit.MM, from);
        Given pressure = Given.of("pressure angle", tooth.pressureAngle().inside(), Unit.DEG, from);
        Given count = Given.of("teeth", teeth, Unit.NONE, gear.id() + "/count");
        Worked pin = ToothThickness.PIN.of(module);
        double over = ToothThickness.overPins(module.inside(), teeth, pressure.inside(), pin.inside());
        int spanned = ToothThickness.spanTeeth(teeth, pressure.inside());
        return Optional.of(new GearCheck(
                InvoluteCutters.number(teeth, numbering),
                InvoluteCutters.half(teeth, numbering).orElse(0.0),
                GearSizes.depth(pressure.inside(), pitch).of(module),
                pin,
                ToothThickness.OVER_PINS.of(over, "", count, module, pressure, pin),
                spanned,
                ToothThickness.SPAN.of(
                        module, pressure, Given.of("teeth in the span", spanned, Unit.NONE, ""), count)));
    }
}
