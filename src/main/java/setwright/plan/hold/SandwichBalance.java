package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.holding.BoardScrews;
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

/** The balance of a sheet or a stack between two boards: screws round its edge press it, and both boards rub. */
final class SandwichBalance {
    private SandwichBalance() {}

    static Optional<Balance> of(String setUp, SetUpStage stage, Rows rows) {
        Friction friction =
                rows.friction("friction-metal-on-board").map(Friction::of).orElse(BoardScrews.ON_BOARD);
        Load weight = Balance.weight(stage, rows);
        int screws =
                BoardScrews.around(stage.heights().length(), stage.heights().depth());
        return Optional.of(Balance.of(
                outlook -> new Grip(contacts(stage.heights(), screws, friction, outlook), weight),
                Given.of(
                        "screws of the boards",
                        BoardScrews.press(screws, Outlook.EXPECTED),
                        Unit.KN,
                        setUp + "/holding/fastening")));
    }

    private static List<Contact> contacts(Heights heights, int screws, Friction friction, Outlook outlook) {
        double each = BoardScrews.press(screws, outlook) / 4;
        double rubs = friction.at(outlook);
        List<Contact> contacts = new ArrayList<>();
        for (int right : List.of(0, 1)) {
            for (int back : List.of(0, 1)) {
                Vector under = new Vector(right * heights.length(), back * heights.depth(), 0);
                Vector over = under.plus(Vector.UP.times(heights.startTop() - heights.partBottom()));
                String where = (back == 0 ? "front " : "back ") + (right == 0 ? "left" : "right");
                contacts.add(Contact.reacting("upper board, " + where, over, Vector.UP.times(-1), rubs)
                        .pressing(each));
                contacts.add(Contact.reacting("lower board, " + where, under, Vector.UP, rubs));
            }
        }
        return contacts;
    }
}
