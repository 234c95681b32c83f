package setwright.window.view.walk;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import setwright.plan.Plan;
import setwright.window.desk.WalkActions;
import setwright.window.look.Palette;
import setwright.window.model.Walk;
import setwright.window.state.Selection;
import setwright.window.view.bench.BenchView;
import setwright.window.view.part.Keys;
import setwright.window.view.part.Markup;

/** Walk through: one step a page, its picture beside it; a hold point does not yield to space. */
public final class WalkView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 30f;
    private static final float MIDDLE = 19f;
    private static final int TARGET = 64;

    private final transient WalkActions actions;
    private final JLabel number = new JLabel();
    private final JLabel text = new JLabel();
    private final JLabel act = new JLabel();
    private final JLabel check = new JLabel();
    private final JLabel bites = new JLabel();
    private final JLabel done = new JLabel();
    private final JLabel askedBy = new JLabel("Name or reading");
    private final JTextField by = new JTextField();
    private final JButton back = new JButton("Back");
    private final JButton next = new JButton("Done");
    private final BenchView bench = new BenchView();
    private transient Walk shown = Walk.EMPTY;

    public WalkView(WalkActions actions) {
        super(new MigLayout("fill, insets 0, gap 0", "[60%, fill][40%, fill]", "[grow, fill]"));
        this.actions = actions;
        setName("walk");
        bench.setName("walk.drawing");
        add(page(), "w 0:60%");
        add(bench, "w 0:40%");
        Keys.within(this, "SPACE", () -> done(""));
        Keys.within(this, "BACK_SPACE", actions::back);
        Keys.within(this, "PAGE_DOWN", actions::on);
        Keys.within(this, "PAGE_UP", actions::back);
    }

    private JPanel page() {
        JPanel page = new JPanel(new BorderLayout());
        page.setOpaque(false);
        page.setBorder(BorderFactory.createEmptyBorder(20, 28, 20, 28));
        JPanel said = new JPanel(
                new MigLayout("fillx, insets 0, gap 0 12, wrap 1, hidemode 3", "[grow, fill]", "[]10[]22[]"));
        said.setOpaque(false);
        name(number, "walk.number", MIDDLE);
        name(text, "walk.text", LARGE);
        name(act, "walk.do", MIDDLE);
        name(check, "walk.check", MIDDLE);
        name(bites, "walk.bites", MIDDLE);
        name(done, "walk.done", MIDDLE);
        for (JComponent part : new JComponent[] {number, text, act, check, bites, done}) {
            said.add(part, "wmin 0");
        }
        page.add(said, BorderLayout.CENTER);
        page.add(foot(), BorderLayout.SOUTH);
        return page;
    }

    private JPanel foot() {
        JPanel foot = new JPanel(new MigLayout("fillx, insets 0, gap 0 12, wrap 1, hidemode 3", "[grow, fill]", ""));
        foot.setOpaque(false);
        by.setName("walk.by");
        by.setFont(by.getFont().deriveFont(MIDDLE));
        by.addActionListener(event -> done(by.getText()));
        askedBy.setFont(askedBy.getFont().deriveFont(MIDDLE));
        askedBy.setLabelFor(by);
        JPanel hold = new JPanel(new MigLayout("insets 0", "[][grow, fill]", "[40!]"));
        hold.setOpaque(false);
        hold.add(askedBy);
        hold.add(by, "h 40!");
        foot.add(hold);
        foot.add(buttons());
        return foot;
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 12", "[160!][grow, fill]", "[" + TARGET + "!]"));
        buttons.setOpaque(false);
        back.setName("walk.back");
        back.addActionListener(event -> actions.back());
        next.setName("walk.next");
        next.addActionListener(event -> done(by.getText()));
        back.setFont(back.getFont().deriveFont(MIDDLE));
        next.setFont(next.getFont().deriveFont(Font.BOLD, MIDDLE));
        back.setFocusable(false);
        next.setFocusable(false);
        buttons.add(back, "growx, h " + TARGET + "!");
        buttons.add(next, "h " + TARGET + "!");
        return buttons;
    }

    private static void name(JLabel label, String name, float size) {
        label.setName(name);
        label.setFont(label.getFont().deriveFont(size));
        label.setVerticalAlignment(SwingConstants.TOP);
    }

    /** At a hold point only a name or a reading turns the page. */
    private void done(String who) {
        if (shown.holds() && who.isBlank()) {
            by.requestFocusInWindow();
            return;
        }
        by.setText("");
        actions.done(who);
        takeKeyboard();
    }

    public void takeKeyboard() {
        bench.requestFocusInWindow();
    }

    public void show(Walk walk, Optional<Plan> plan) {
        boolean turned = walk.number() != shown.number();
        shown = walk;
        setBackground(Palette.now().sheet());
        number.setText("Step " + walk.number() + " of " + walk.of() + (walk.holds() ? ": hold point" : ""));
        text.setText(wrapped(walk.text()));
        line(act, "Do", walk.act());
        line(check, "Check", walk.check());
        line(bites, "Bites here", walk.bitesHere());
        done.setText(walk.done().isEmpty() ? "" : "Done: " + walk.done());
        by.getParent().setVisible(walk.holds());
        next.setText(walk.holds() ? "Done: Enter takes the name or reading" : "Done: space");
        back.setText("Back");
        back.setEnabled(walk.number() > 1);
        number.setForeground(Palette.now().pencil());
        bench.show(plan, new Selection(walk.setUp(), walk.operation()), Optional.empty());
        if (turned && isShowing()) {
            takeKeyboard();
        }
    }

    private static void line(JLabel label, String what, String said) {
        label.setText(wrapped(what + ": " + said));
        label.setVisible(!said.isEmpty());
    }

    private static String wrapped(String text) {
        return "<html>" + Markup.escaped(text) + "</html>";
    }
}
