package setwright.plan.hold;

import java.util.Optional;
import setwright.geometry.Box;
import setwright.holding.GripAsked;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.Packing;
import setwright.holding.ViseGrip;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.shop.Vise;

/** The balance of a device, with its part as one piece, between the jaws of the vise that it is put into. */
record InVise(String setUp, Vise vise, SetUpStage stage, Rows rows) {
    static Optional<InVise> of(String setUp, DrawnDevice device, SetUpStage stage, Rows rows) {
        return rows.vise(device.vise().value()).map(vise -> new InVise(setUp, vise, stage, rows));
    }

    /** @param body of the device on the vise bed, or on parallels over it */
    Balance balance(Box body) {
        Heights heights = stage.heights();
        double jaws = vise.bedHeight().inside() + vise.jawHeight().inside();
        double high = Math.max(1, Math.min(jaws, body.zHigh()) - body.zLow());
        Held held = Held.central(body.plan().length(), body.plan().depth(), high);
        Vector corner = new Vector(
                body.plan().xLow() - heights.left(),
                body.plan().yLow() - heights.front(),
                body.zLow() - heights.partBottom());
        ViseGrip grip = ViseGrip.of(
                        held, Jaws.of(vise, JawFriction.ofSteel(vise.jawFace(), rows)), GripAsked.FIRM.force(vise))
                .on(Packing.parallels(held, 0));
        Load weight = Balance.weight(stage, rows);
        return Balance.of(
                outlook -> moved(grip.grip(outlook, Load.NONE), corner, weight),
                Given.of("grip, firm", grip.force(Outlook.EXPECTED), Unit.KN, setUp + "/holding/vise"));
    }

    /** The same contacts as seen from the part's corner. */
    private static Grip moved(Grip grip, Vector corner, Load weight) {
        return new Grip(
                grip.contacts().stream()
                        .map(one -> new Contact(
                                one.name(), one.at().plus(corner), one.normal(), one.friction(), one.press()))
                        .toList(),
                weight);
    }
}
