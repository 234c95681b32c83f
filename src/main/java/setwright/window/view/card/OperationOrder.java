package setwright.window.view.card;

import java.util.List;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import setwright.window.desk.OperationActions;
import setwright.window.model.Addable;
import setwright.window.view.part.Keys;

/** Adds, duplicates, deletes and moves the line of the card that the keyboard is at. */
public final class OperationOrder {
    private final CardView card;
    private final OperationActions actions;

    public OperationOrder(CardView card, OperationActions actions) {
        this.card = card;
        this.actions = actions;
    }

    /** Offers what could be added behind the line. */
    public void add() {
        String line = card.current();
        List<Addable> kinds = actions.addable(line);
        JPopupMenu offered = new JPopupMenu("Add an operation");
        offered.setName("addable");
        for (Addable addable : kinds) {
            JMenuItem item = new JMenuItem(Keys.action(addable.text(), () -> actions.add(line, addable)));
            item.setName("add." + addable.kind().name());
            offered.add(item);
        }
        if (kinds.isEmpty()) {
            JMenuItem nothing = new JMenuItem("The drawing asks for nothing on this side");
            nothing.setEnabled(false);
            offered.add(nothing);
        }
        offered.show(card, 12, card.below(line));
    }

    public void duplicate() {
        actions.duplicate(card.current());
    }

    public void delete() {
        actions.delete(card.current());
    }

    public void move(int by) {
        actions.move(card.current(), by);
    }
}
