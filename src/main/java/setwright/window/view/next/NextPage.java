package setwright.window.view.next;

import java.awt.Component;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.NextActions;
import setwright.window.look.Palette;
import setwright.window.model.Next;
import setwright.window.view.part.Keys;

/** The opened caution: why it matters, up to three remedies already tried, and accepting it with a reason. */
public final class NextPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient NextActions actions;
    private final JTextArea sentence = words("next.sentence");
    private final JTextArea why = words("next.why");
    private final JPanel remedies = new JPanel(new MigLayout("fillx, insets 0, gap 0 4, wrap 1", "[grow, fill]", ""));
    private final JLabel waiting = new JLabel();
    private final JLabel byLabel = new JLabel();
    private final JTextField by = new JTextField(10);
    private final JTextField reason = new JTextField(20);
    private final JButton accept = new JButton("Accept");
    private final JPanel acceptance = new JPanel(new MigLayout("insets 0, gap 6", "[][][][grow, fill][]", "[28!]"));
    private String caution = "";
    private List<Next.Remedy> shown = List.of();

    public NextPage(NextActions actions) {
        super(new MigLayout("fillx, insets 10 12 10 12, gap 0 6, wrap 1, hidemode 3", "[grow, fill]", ""));
        this.actions = actions;
        setName("next.page");
        setFocusable(true);
        getAccessibleContext().setAccessibleName("The opened caution");
        remedies.setOpaque(false);
        remedies.setName("next.remedies");
        add(sentence, "wmin 0");
        add(why, "wmin 0");
        add(remedies, "wmin 0");
        add(waiting, "wmin 0");
        buildAcceptance();
        add(acceptance, "wmin 0");
        bindKeys();
    }

    /** Text that wraps. */
    private static JTextArea words(String name) {
        JTextArea words = new JTextArea();
        words.setName(name);
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setFocusable(false);
        return words;
    }

    private void buildAcceptance() {
        acceptance.setOpaque(false);
        by.setName("accept.by");
        reason.setName("accept.reason");
        accept.setName("accept");
        label(byLabel, by);
        label(new JLabel("because"), reason);
        acceptance.add(accept, "h 28!");
        Runnable take = () -> {
            if (!by.getText().isBlank() && !reason.getText().isBlank()) {
                actions.accept(by.getText().strip(), reason.getText().strip());
                reason.setText("");
            }
        };
        accept.addActionListener(event -> take.run());
        reason.addActionListener(event -> take.run());
    }

    private void label(JLabel label, JTextField field) {
        label.setLabelFor(field);
        acceptance.add(label);
        acceptance.add(field, "h 28!, wmin 80");
    }

    private void bindKeys() {
        for (int i = 1; i <= 3; i++) {
            int remedy = i;
            Keys.within(this, KeyStroke.getKeyStroke((char) ('0' + i)), () -> take(remedy));
            Keys.within(this, KeyStroke.getKeyStroke(KeyEvent.VK_NUMPAD0 + i, 0), () -> take(remedy));
        }
        Keys.within(this, "ESCAPE", actions::close);
    }

    /** A digit typed into the reason is a digit. */
    private void take(int remedy) {
        boolean typing = by.isFocusOwner() || reason.isFocusOwner();
        if (!typing && remedy <= shown.size()) {
            actions.take(remedy);
        }
    }

    /** Whether it was folded away while it had the keyboard. */
    public boolean show(Next next, String person) {
        Next.Page page = next.page();
        boolean leaves = !page.open() && isVisible() && hasKeyboard();
        Palette palette = Palette.now();
        setBackground(palette.sheet());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(1, 0, 0, 0, palette.ink()), BorderFactory.createEmptyBorder()));
        boolean fresh = page.open() && (!isVisible() || !caution.equals(next.caution()));
        setVisible(page.open());
        caution = next.caution();
        sentence.setText(next.sentence());
        sentence.setFont(getFont().deriveFont(Font.BOLD));
        sentence.setForeground(palette.ink());
        why.setText(page.why());
        why.setForeground(palette.ink());
        waiting.setText(page.waiting());
        waiting.setForeground(palette.pencil());
        waiting.setVisible(!page.waiting().isEmpty());
        byLabel.setText(page.accept());
        if (by.getText().isEmpty()) {
            by.setText(person);
        }
        if (!shown.equals(page.remedies())) {
            shown = page.remedies();
            rebuild();
        }
        if (fresh) {
            first().requestFocusInWindow();
        }
        return leaves;
    }

    private boolean hasKeyboard() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, this);
    }

    /** The first remedy; while none is tried yet the page itself, so that its number is no part of a reason. */
    private JComponent first() {
        return remedies.getComponentCount() > 0 ? (JComponent) remedies.getComponent(0) : this;
    }

    private void rebuild() {
        boolean hadFocus =
                isFocusOwner() || List.of(remedies.getComponents()).stream().anyMatch(Component::isFocusOwner);
        remedies.removeAll();
        List<RemedyButton> buttons = new ArrayList<>();
        for (Next.Remedy remedy : shown) {
            RemedyButton button = new RemedyButton(remedy, actions::take);
            buttons.add(button);
            remedies.add(button, "h 44!, wmin 0");
        }
        remedies.revalidate();
        if (hadFocus && !buttons.isEmpty()) {
            buttons.get(0).requestFocusInWindow();
        }
    }
}
