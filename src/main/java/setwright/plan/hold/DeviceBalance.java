package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Box;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.holding.DeviceBolts;
import setwright.holding.Friction;
import setwright.holding.Outlook;
import setwright.holding.balance.Contact;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.Vise;

/** The balance of a device on the table under its own bolts: the corners of its base rub, bolts and weight press. */
record DeviceBalance(FrictionBalance expected, FrictionBalance pessimistic, Value given) {
    private static final String TABLE = "friction-cast-iron-on-cast-iron";

    static Optional<DeviceBalance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        return switch (setUp.holding().kind()) {
            case VISE ->
                rows.vise(((DrawnVise) setUp.holding()).vise().value())
                        .flatMap(vise -> base(stage).map(base -> bolted(setUp.id(), vise, base, stage, rows)));
            case TABLE, DEVICE -> Optional.empty();
        };
    }

    private static Optional<Box> base(SetUpStage stage) {
        return stage.fixtures().stream()
                .filter(body -> body.role() == Role.VISE_BED)
                .map(body -> ((Prism) body.solid()).box())
                .findFirst();
    }

    private static DeviceBalance bolted(String id, Vise vise, Box base, SetUpStage stage, Rows rows) {
        Friction friction = rows.friction(TABLE).map(Friction::of).orElse(DeviceBolts.ON_TABLE);
        double weight = Balance.GRAVITY
                * (vise.mass().inside()
                        + stage.start().bulk().volume()
                                * rows.material().density().inside());
        Value given = Given.of("bolts of the device", DeviceBolts.press(Outlook.EXPECTED), Unit.KN, id + "/holding");
        return new DeviceBalance(
                balance(Outlook.EXPECTED, friction, base, weight, stage.heights()),
                balance(Outlook.PESSIMISTIC, friction, base, weight, stage.heights()),
                given);
    }

    private static FrictionBalance balance(
            Outlook outlook, Friction friction, Box base, double weight, Heights heights) {
        List<Contact> corners = new ArrayList<>();
        for (boolean back : List.of(false, true)) {
            for (boolean right : List.of(false, true)) {
                Vector at = new Vector(
                        (right ? base.plan().xHigh() : base.plan().xLow()) - heights.left(),
                        (back ? base.plan().yHigh() : base.plan().yLow()) - heights.front(),
                        -heights.partBottom());
                String corner = (back ? "back " : "front ") + (right ? "right" : "left");
                corners.add(Contact.reacting("base, " + corner, at, Vector.UP, friction.at(outlook)));
            }
        }
        Vector middle = new Vector(
                (base.plan().xLow() + base.plan().xHigh()) / 2 - heights.left(),
                (base.plan().yLow() + base.plan().yHigh()) / 2 - heights.front(),
                -heights.partBottom());
        return new FrictionBalance(new Grip(corners, Load.weight(weight + DeviceBolts.press(outlook), middle)));
    }

    OperationHold hold(HoldQuestion question) {
        List<Load> loads = question.loads();
        return Holds.hold(
                question.setUp(),
                question.operation(),
                expected.answer(loads),
                pessimistic.answer(OperationLoads.worn(loads)),
                given);
    }
}
