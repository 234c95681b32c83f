package setwright.plan.hold;

import java.util.Optional;
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
import setwright.plan.part.DeviceVise;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.ColletBlock;
import setwright.shop.Vise;

/** The balance of a collet block, with its bar as one piece, between the jaws of the vise that it is put into. */
final class ColletBlockBalance {
    private ColletBlockBalance() {}

    static Optional<Balance> of(String setUp, DrawnDevice device, SetUpStage stage, Rows rows) {
        return rows.row(device.device().value(), ColletBlock.class)
                .flatMap(block ->
                        DeviceVise.of(block, rows).map(vise -> inVise(setUp, new Joint(block, vise), stage, rows)));
    }

    private static Balance inVise(String setUp, Joint joint, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        boolean upright = Math.abs(heights.partBottom() - heights.bed()) < 1e-9;
        double flats = joint.block().acrossFlats().inside();
        double along = upright ? flats : joint.block().length().inside();
        double high = Math.min(
                joint.vise().jawHeight().inside(),
                upright ? joint.block().length().inside() : flats);
        Held held = Held.central(along, flats, high);
        Vector corner = new Vector(
                upright ? (heights.length() - flats) / 2 : 0,
                (heights.depth() - flats) / 2,
                heights.bed() - heights.partBottom());
        ViseGrip grip = ViseGrip.of(
                        held,
                        Jaws.of(joint.vise(), JawFriction.ofSteel(joint.vise().jawFace(), rows)),
                        GripAsked.FIRM.force(joint.vise()))
                .on(Packing.parallels(held, 0));
        Load weight = Balance.weight(stage, rows);
        Value given = Given.of("grip, firm", grip.force(Outlook.EXPECTED), Unit.KN, setUp + "/holding/device");
        return Balance.of(outlook -> moved(grip.grip(outlook, weight), corner), given);
    }

    /** The same contacts as seen from the part's corner. */
    private static Grip moved(Grip grip, Vector corner) {
        return new Grip(
                grip.contacts().stream()
                        .map(one -> new Contact(
                                one.name(), one.at().plus(corner), one.normal(), one.friction(), one.press()))
                        .toList(),
                grip.ownWeight());
    }

    private record Joint(ColletBlock block, Vise vise) {}
}
