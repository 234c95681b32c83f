package setwright.window.view;

import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.model.Card;
import setwright.window.model.Line;

/** The card: its lines below each other, the chosen one unfolded in place. */
final class CardView extends JScrollPane {
    private static final long serialVersionUID = 1L;

    private final JPanel sheet = new ScrolledPanel(new MigLayout("fillx, insets 0, gap 0, wrap 1", "[grow, fill]", ""));
    private final UnfoldedView unfolded;
    private final transient CardActions actions;
    private final transient List<LineHead> heads = new ArrayList<>();
    private List<String> built = List.of();
    private boolean waited;

    CardView(CardActions actions) {
        super(ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        this.actions = actions;
        this.unfolded = new UnfoldedView(actions);
        setName("card");
        setBorder(null);
        setViewportView(sheet);
        getVerticalScrollBar().setUnitIncrement(LineHead.HEIGHT / 2);
        sheet.getAccessibleContext().setAccessibleName("Card");
        bind(KeyEvent.VK_DOWN, 1);
        bind(KeyEvent.VK_UP, -1);
    }

    void show(Card card) {
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
        }
        if (waited) {
            takeKeyboard();
        }
    }

    /** The unfolded line takes the keyboard, else the first; where there is none yet, as soon as there is. */
    void takeKeyboard() {
        waited = heads.isEmpty();
        if (!waited) {
            heads.get(indexOfUnfolded()).requestFocusInWindow();
        }
    }

    /** Keeps the line that has the keyboard, so that it is not lost when the card is laid out anew. */
    private void build(Card card) {
        String focused = heads.stream()
                .filter(JComponent::isFocusOwner)
                .map(JComponent::getName)
                .findFirst()
                .orElse("");
        sheet.removeAll();
        List<LineHead> before = new ArrayList<>(heads);
        heads.clear();
        for (Line line : card.lines()) {
            LineHead head = before.stream()
                    .filter(each -> each.getName().equals("line." + line.key()))
                    .findFirst()
                    .orElseGet(() -> new LineHead(line, actions));
            heads.add(head);
            sheet.add(head, "h " + LineHead.HEIGHT + "!");
            if (line.key().equals(card.chosen())) {
                sheet.add(unfolded);
            }
        }
        sheet.revalidate();
        sheet.repaint();
        heads.stream().filter(head -> head.getName().equals(focused)).forEach(JComponent::requestFocusInWindow);
    }

    private void bringIntoView(String chosen) {
        javax.swing.SwingUtilities.invokeLater(() -> heads.stream()
                .filter(head -> head.getName().equals("line." + chosen))
                .findFirst()
                .ifPresent(head -> {
                    Rectangle whole = head.getBounds();
                    whole.height += unfolded.getHeight();
                    whole.height = Math.min(whole.height, getViewport().getHeight());
                    sheet.scrollRectToVisible(whole);
                }));
    }

    private void bind(int key, int step) {
        String name = "line " + step;
        sheet.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), name);
        sheet.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                moveFocus(step);
            }
        });
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
