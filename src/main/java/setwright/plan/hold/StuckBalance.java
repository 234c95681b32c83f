package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.holding.Outlook;
import setwright.holding.StuckDown;
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
import setwright.shop.Adhesive;

/**
 * The balance of a part that tape or glue holds down: in the middles of the quarters of its face it is pulled down with
 * what the film bears straight off, and rubs with what it bears along the face; its corners only bear.
 */
final class StuckBalance {
    private StuckBalance() {}

    static Optional<Balance> of(String setUp, DrawnDevice device, SetUpStage stage, Rows rows) {
        return rows.row(device.gear().value(), Adhesive.class).map(adhesive -> on(setUp, adhesive, stage, rows));
    }

    private static Balance on(String setUp, Adhesive adhesive, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        double height = heights.startTop() - heights.partBottom();
        double area = stage.start().bound() / height;
        Load weight = Balance.weight(stage, rows);
        return Balance.of(
                outlook -> new Grip(contacts(adhesive, heights, area, outlook), weight),
                Given.of(
                        "pull that the film bears",
                        StuckDown.pull(adhesive, area, Outlook.EXPECTED),
                        Unit.KN,
                        setUp + "/holding/gear"));
    }

    private static List<Contact> contacts(Adhesive adhesive, Heights heights, double area, Outlook outlook) {
        double pull = StuckDown.pull(adhesive, area, outlook);
        double rubs = StuckDown.shear(adhesive, area, outlook) / pull;
        List<Contact> contacts = new ArrayList<>();
        for (int right : List.of(-1, 1)) {
            for (int back : List.of(-1, 1)) {
                String where = (back < 0 ? "front " : "back ") + (right < 0 ? "left" : "right");
                Vector quarter = place(heights, 0.25 * right, 0.25 * back);
                contacts.add(Contact.reacting("film, " + where, quarter, Vector.UP.times(-1), 0)
                        .pressing(pull / 4));
                contacts.add(Contact.reacting("film, " + where, quarter, Vector.UP, rubs));
                contacts.add(Contact.reacting("edge, " + where, place(heights, 0.5 * right, 0.5 * back), Vector.UP, 0));
            }
        }
        return contacts;
    }

    private static Vector place(Heights heights, double along, double across) {
        return new Vector(heights.length() * (0.5 + along), heights.depth() * (0.5 + across), 0);
    }
}
