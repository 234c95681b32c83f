package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Box;
import setwright.holding.DeviceBolts;
import setwright.holding.Friction;
import setwright.holding.Outlook;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;

/** The balance of a device as one piece: between the jaws of a vise, or on the table under its own bolts. */
record DeviceBalance(Joint joint, String thing, Balance balance) implements JointBalance {
    /**
     * A device on the table: the corners of its base rub, its bolts and all weight press.
     *
     * @param base its foot on the table
     * @param mass of the device, kg
     * @param bolts how many hold it down
     */
    record Foot(String name, Box base, double mass, int bolts, Friction friction) {}

    static DeviceBalance bolted(String setUp, Foot foot, SetUpStage stage, Rows rows) {
        double weight = Balance.GRAVITY
                * (foot.mass()
                        + stage.start().bound() * rows.material().density().inside());
        return new DeviceBalance(
                Joint.ON_TABLE,
                foot.name(),
                Balance.of(
                        outlook -> grip(outlook, foot, weight, stage.heights()),
                        Given.of(
                                "bolts of the device",
                                DeviceBolts.press(foot.bolts(), Outlook.EXPECTED),
                                Unit.KN,
                                setUp + "/holding")));
    }

    private static Grip grip(Outlook outlook, Foot foot, double weight, Heights heights) {
        List<Contact> corners = new ArrayList<>();
        double left = foot.base().plan().xLow() - heights.left();
        double right = foot.base().plan().xHigh() - heights.left();
        double front = foot.base().plan().yLow() - heights.front();
        double back = foot.base().plan().yHigh() - heights.front();
        double table = -heights.partBottom();
        double friction = foot.friction().at(outlook);
        corners.add(corner("front left", new Vector(left, front, table), friction));
        corners.add(corner("front right", new Vector(right, front, table), friction));
        corners.add(corner("back left", new Vector(left, back, table), friction));
        corners.add(corner("back right", new Vector(right, back, table), friction));
        Vector middle = new Vector((left + right) / 2, (front + back) / 2, table);
        return new Grip(corners, Load.weight(weight + DeviceBolts.press(foot.bolts(), outlook), middle));
    }

    private static Contact corner(String name, Vector at, double friction) {
        return Contact.reacting("base, " + name, at, Vector.UP, friction);
    }

    @Override
    public OperationHold hold(HoldQuestion asked) {
        return Holds.hold(asked, joint, thing, balance);
    }
}
