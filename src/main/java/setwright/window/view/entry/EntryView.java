package setwright.window.view.entry;

import java.awt.Color;
import java.awt.Font;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.EntryActions;
import setwright.window.look.Palette;
import setwright.window.model.EntryPage;
import setwright.window.state.Entry;
import setwright.window.view.part.Keys;

/** In the place of the card: title block, the notes so far, the line that is typed; the plan that they make stands beside it. */
public final class EntryView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel heading = new JLabel();
    private final TitleView title;
    private final NotesView notes = new NotesView();
    private final NoteLineView line;
    private Entry.Page shown = Entry.Page.CLOSED;

    public EntryView(EntryActions actions) {
        super(new MigLayout("fill, insets 10 12 10 12, gap 0 8, wrap 1, hidemode 3", "[grow, fill]"));
        setName("entry");
        title = new TitleView(actions, this::toNotes);
        line = new NoteLineView(actions);
        heading.setName("entry.heading");
        add(heading);
        add(title, "wmin 0");
        add(notes, "wmin 0, hmin 40, pushy, growy");
        add(line, "wmin 0");
        add(buttons(actions), "wmin 0");
        Keys.within(this, "F8", () -> square(actions));
        Keys.within(this, "ESCAPE", actions::back);
    }

    private JPanel buttons(EntryActions actions) {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6", "[][][]", "[28!]"));
        buttons.setOpaque(false);
        JButton square = new JButton("Square up this blank (F8)");
        square.setName("entry.square");
        square.addActionListener(event -> square(actions));
        JButton plan = new JButton("To the plan (Enter)");
        plan.setName("entry.close");
        plan.addActionListener(event -> actions.close());
        buttons.add(square, "h 28!");
        buttons.add(new KindsButton(line::begin), "h 28!");
        buttons.add(plan, "h 28!");
        return buttons;
    }

    /** One gesture: every side faced to the sizes of the blank. */
    private static void square(EntryActions actions) {
        actions.note("square up");
        actions.take();
    }

    /** Whether it came up or went away. */
    public boolean show(EntryPage page) {
        boolean other = page.page() != shown;
        shown = page.page();
        setVisible(page.open());
        if (!page.open()) {
            return other;
        }
        heading.setText(
                switch (page.page()) {
                    case NEW_JOB -> "New job";
                    case NOTES, CLOSED -> "Add notes to this job";
                });
        heading.setFont(getFont().deriveFont(Font.BOLD, 15f));
        heading.setForeground(Palette.now().ink());
        title.show(page);
        notes.show(page.notes());
        line.show(page);
        return other;
    }

    public void takeKeyboard() {
        switch (shown) {
            case NEW_JOB -> title.takeKeyboard();
            case NOTES, CLOSED -> toNotes();
        }
    }

    private void toNotes() {
        line.takeKeyboard();
    }

    @Override
    public Color getBackground() {
        return Palette.now().sheet();
    }
}
