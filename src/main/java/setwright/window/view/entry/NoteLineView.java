package setwright.window.view.entry;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import setwright.job.note.NoteRead;
import setwright.window.desk.EntryActions;
import setwright.window.look.Palette;
import setwright.window.model.EntryPage;
import setwright.window.view.part.Keys;
import setwright.window.view.part.PlainField;
import setwright.window.view.part.WrappingText;

/** The line that is typed, its sentence, the one blank that is asked, and the readings that are offered. */
final class NoteLineView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MOST_OFFERS = 4;

    private final transient EntryActions actions;
    private final JLabel label = new JLabel("Note, as on the drawing: 4x M6 thru, slot 12x8, 10 H7 thru");
    private final PlainField note;
    private final WrappingText sentence = new WrappingText("entry.sentence");
    private final WrappingText refused = new WrappingText("entry.refused");
    private final JLabel asks = new JLabel();
    private final PlainField answer;
    private final JPanel offers = new JPanel(new MigLayout("fillx, insets 0, gap 0 4, wrap 1", "[grow, fill]", ""));
    private final transient List<JButton> buttons = new ArrayList<>();
    private List<NoteRead.Offer> offered = List.of();

    NoteLineView(EntryActions actions) {
        super(new MigLayout("fillx, insets 0, gap 0 4, wrap 1, hidemode 3", "[grow, fill]", ""));
        this.actions = actions;
        setOpaque(false);
        note = new PlainField("entry.note", actions::note, this::enter);
        answer = new PlainField("entry.answer", actions::answer, actions::take);
        label.setLabelFor(note);
        asks.setLabelFor(answer);
        asks.setName("entry.asks");
        offers.setOpaque(false);
        add(label, "wmin 0");
        JButton take = new JButton("Take it");
        take.setName("entry.take");
        take.addActionListener(event -> {
            actions.take();
            note.requestFocusInWindow();
        });
        add(note, "split 2, h 28!, wmin 0, growx, pushx");
        add(take, "h 28!, growx 0");
        add(sentence, "wmin 0");
        add(refused, "wmin 0");
        add(asks, "wmin 0");
        add(answer, "h 28!, wmin 0");
        add(offers, "wmin 0");
        for (int i = 1; i <= MOST_OFFERS; i++) {
            int number = i;
            Keys.within(offers, KeyStroke.getKeyStroke((char) ('0' + i)), () -> actions.pick(number));
            Keys.within(offers, KeyStroke.getKeyStroke(KeyEvent.VK_NUMPAD0 + i, 0), () -> actions.pick(number));
        }
    }

    /** On a note that lacks something Enter goes to the blank, on one with two readings to the first of them. */
    private void enter() {
        if (answer.isVisible()) {
            answer.requestFocusInWindow();
        } else if (!buttons.isEmpty()) {
            buttons.get(0).requestFocusInWindow();
        } else {
            actions.take();
        }
    }

    void takeKeyboard() {
        note.requestFocusInWindow();
    }

    /** The note's line begins so; what it lacks is asked blank by blank. */
    void begin(String words) {
        actions.note(words);
        enter();
    }

    void show(EntryPage page) {
        label.setForeground(Palette.now().pencil());
        asks.setForeground(Palette.now().ink());
        sentence.setForeground(Palette.now().ink());
        refused.setForeground(Palette.now().stop());
        note.write(page.note());
        note.getAccessibleContext().setAccessibleName("Note");
        note.getAccessibleContext().setAccessibleDescription(page.sentence() + page.refused() + page.asks());
        sentence.write(page.sentence());
        refused.write(page.note().isBlank() ? "" : page.refused());
        boolean asking = !page.asks().isEmpty();
        boolean inBlank = answer.isFocusOwner() || offers.isAncestorOf(focusOwner());
        asks.setText(page.asks());
        answer.getAccessibleContext().setAccessibleName(asking ? page.asks() : "Blank");
        answer.write(page.answer());
        asks.setVisible(asking);
        answer.setVisible(asking);
        show(page.offers());
        keepKeyboard(inBlank, asking);
        revalidate();
    }

    private static java.awt.Component focusOwner() {
        return java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** Where the blank was filled or a reading picked, the keyboard goes to what is asked next, else back to the note. */
    private void keepKeyboard(boolean inBlank, boolean asking) {
        if (!inBlank || answer.isFocusOwner() && asking) {
            return;
        }
        if (asking) {
            answer.requestFocusInWindow();
        } else if (!buttons.isEmpty()) {
            buttons.get(0).requestFocusInWindow();
        } else {
            note.requestFocusInWindow();
        }
    }

    private void show(List<NoteRead.Offer> shown) {
        if (shown.equals(offered)) {
            return;
        }
        offered = List.copyOf(shown);
        offers.removeAll();
        buttons.clear();
        for (int i = 0; i < Math.min(MOST_OFFERS, shown.size()); i++) {
            int number = i + 1;
            JButton button = new JButton(number + "  " + shown.get(i).sentence());
            button.setName("entry.offer." + number);
            button.setHorizontalAlignment(SwingConstants.LEADING);
            button.addActionListener(event -> actions.pick(number));
            buttons.add(button);
            offers.add(button, "h 28!, wmin 0");
        }
        offers.setVisible(!shown.isEmpty());
    }
}
