package setwright.window.view.card;

import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import setwright.window.desk.CardActions;
import setwright.window.desk.OperationActions;
import setwright.window.look.Palette;
import setwright.window.model.Card;
import setwright.window.model.Line;
import setwright.window.view.part.Dragged;
import setwright.window.view.part.Keys;
import setwright.window.view.part.ScrolledPanel;

/** The card: its lines below each other, the chosen one unfolded in place. */
public final class CardView extends JScrollPane {
    private static final long serialVersionUID = 1L;

    private final JPanel sheet = new ScrolledPanel(new MigLayout("fillx, insets 0, gap 0, wrap 1", "[grow, fill]", ""));
    private final UnfoldedView unfolded;
    private final transient CardActions actions;
    private final transient OperationActions operations;
    private final transient List<LineHead> heads = new ArrayList<>();
    private List<String> built = List.of();
    /** The line that asked for the keyboard and has not got it yet; laid out anew meanwhile, the card asks again. */
    private @Nullable LineHead asked;

    private String current = "";
    private boolean waited;
    private String awaited = "";

    public CardView(CardActions actions, OperationActions operations) {
        super(ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        this.actions = actions;
        this.operations = operations;
        this.unfolded = new UnfoldedView(actions);
        setName("card");
        setBorder(null);
        setViewportView(sheet);
        getVerticalScrollBar().setUnitIncrement(LineHead.HEIGHT / 2);
        sheet.getAccessibleContext().setAccessibleName("Card");
        Keys.within(sheet, "DOWN", () -> moveFocus(1));
        Keys.within(sheet, "UP", () -> moveFocus(-1));
    }

    public void show(Card card) {
        sheet.setBackground(Palette.now().sheet());
        getViewport().setBackground(Palette.now().sheet());
        List<String> keys = new ArrayList<>(card.lines().stream().map(Line::key).toList());
        keys.add(" " + card.chosen());
        boolean moved = !keys.equals(built);
        if (moved) {
            build(card);
            built = keys;
        }
        for (int i = 0; i < heads.size(); i++) {
            Line line = card.lines().get(i);
            heads.get(i).show(line, line.key().equals(card.chosen()));
        }
        unfolded.show(card.unfolded());
        if (moved) {
            bringIntoView(card.chosen());
            current = card.chosen().isEmpty() ? current : card.chosen();
        }
        if (waited) {
            takeKeyboard();
        }
        if (!awaited.isEmpty() && unfolded.takeKeyboard(awaited)) {
            awaited = "";
        }
    }

    /** A field of the unfolded line takes the keyboard, as soon as it is there. */
    public void toField(String key) {
        awaited = unfolded.takeKeyboard(key) ? "" : key;
    }

    /** The unfolded line takes the keyboard, else the first; where there is none yet, as soon as there is. */
    public void takeKeyboard() {
        waited = heads.isEmpty();
        if (!waited) {
            heads.get(indexOfUnfolded()).requestFocusInWindow();
        }
    }

    /** Key of the line that the keyboard is at, or was at last; that of the unfolded one where it is within. */
    String current() {
        return heads.stream().anyMatch(head -> head.key().equals(current)) ? current : "";
    }

    /** Where the line ends, px from the top of the card. */
    int below(String line) {
        return heads.stream()
                .filter(head -> head.key().equals(line))
                .findFirst()
                .map(head -> head.getY() + head.getHeight() - getViewport().getViewPosition().y)
                .orElse(0);
    }

    private LineHead head(Line line) {
        LineHead head = new LineHead(line, actions);
        String key = line.key();
        head.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                current = key;
                asked = null;
            }
        });
        Keys.on(head, "DELETE", () -> operations.delete(key));
        Dragged.down(head, by -> operations.move(key, by));
        return head;
    }

    /** Lays the lines out anew. The line that has the keyboard keeps it; where it is gone, the one in its place gets it. */
    private void build(Card card) {
        List<LineHead> before = new ArrayList<>(heads);
        int focused = focused(before);
        if (focused < 0 && asked != null) {
            focused = before.indexOf(asked);
        }
        sheet.removeAll();
        heads.clear();
        for (Line line : card.lines()) {
            LineHead head = before.stream()
                    .filter(each -> each.key().equals(line.key()))
                    .findFirst()
                    .orElseGet(() -> head(line));
            heads.add(head);
            sheet.add(head, "h " + LineHead.HEIGHT + "!");
            if (line.key().equals(card.chosen())) {
                sheet.add(unfolded);
            }
        }
        sheet.revalidate();
        sheet.repaint();
        if (focused >= 0 && !heads.isEmpty()) {
            keyboardTo(before.get(focused), focused);
        }
    }

    private static int focused(List<LineHead> heads) {
        for (int i = 0; i < heads.size(); i++) {
            if (heads.get(i).isFocusOwner()) {
                return i;
            }
        }
        return -1;
    }

    private void keyboardTo(LineHead before, int place) {
        boolean there = heads.contains(before);
        LineHead head = there ? before : heads.get(Math.min(place, heads.size() - 1));
        asked = head.requestFocusInWindow() ? head : null;
    }

    private void bringIntoView(String chosen) {
        javax.swing.SwingUtilities.invokeLater(() -> heads.stream()
                .filter(head -> head.key().equals(chosen))
                .findFirst()
                .ifPresent(head -> {
                    Rectangle whole = head.getBounds();
                    whole.height += unfolded.getHeight();
                    whole.height = Math.min(whole.height, getViewport().getHeight());
                    sheet.scrollRectToVisible(whole);
                }));
    }

    /** From line to line; from within the unfolded part to the line above or below it. */
    private void moveFocus(int step) {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int at = heads.indexOf(owner);
        if (at < 0) {
            at = indexOfUnfolded() - (step < 0 ? -1 : 0);
        }
        int next = Math.min(heads.size() - 1, Math.max(0, at + step));
        if (!heads.isEmpty()) {
            heads.get(next).requestFocusInWindow();
            sheet.scrollRectToVisible(heads.get(next).getBounds());
        }
    }

    private int indexOfUnfolded() {
        for (int i = 0; i < heads.size(); i++) {
            if (heads.get(i).isSelected()) {
                return i;
            }
        }
        return 0;
    }
}
