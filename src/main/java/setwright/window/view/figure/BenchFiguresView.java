package setwright.window.view.figure;

import java.awt.Color;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.BenchActions;
import setwright.window.look.Palette;
import setwright.window.model.BenchPage;
import setwright.window.model.Field;
import setwright.window.view.card.FieldBox;
import setwright.window.view.card.Onward;
import setwright.window.view.part.Keys;
import setwright.window.view.part.PlainField;

/** A search over all bench figures; the chosen one as fields, its answers beside them as they are typed. */
public final class BenchFiguresView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient BenchActions actions;
    private final PlainField search;
    private final FoundView found;
    private final JPanel blanks = new JPanel(new MigLayout("fillx, insets 0, gap 0 8, wrap 1", "[grow, fill]", ""));
    private final AnswerView answers = new AnswerView();
    private final JPanel uses = new JPanel(new MigLayout("insets 0, gap 8 0"));
    private final JButton copy = new JButton("Copy (Ctrl+Shift+C)");
    private final transient List<FieldBox> boxes = new ArrayList<>();
    private List<String> built = List.of();
    private String figure = "";
    private BenchPage page = BenchPage.CLOSED;

    public BenchFiguresView(BenchActions actions) {
        super(new MigLayout(
                "fill, insets 16 20 12 20, gap 28 12, hidemode 3",
                "[460!, fill][grow, fill]",
                "[28!][grow, top][28!]"));
        this.actions = actions;
        setName("figures");
        search = new PlainField("figures.search", actions::search, this::chosen);
        search.getAccessibleContext().setAccessibleName("Bench figure");
        found = new FoundView(actions::choose);
        blanks.setOpaque(false);
        uses.setOpaque(false);
        copy.setName("figures.copy");
        copy.addActionListener(event -> copy());
        JButton back = new JButton("Back to the job (Esc)");
        back.setName("figures.back");
        back.addActionListener(event -> actions.close());
        add(search, "cell 0 0");
        add(blanks, "cell 0 1, aligny top");
        add(found, "cell 1 1, grow, wmin 0, hmin 0");
        add(answers, "cell 1 1, grow, wmin 0, hmin 0");
        add(copy, "cell 0 2, split 2, h 28!");
        add(back, "h 28!");
        add(uses, "cell 1 2");
        Keys.within(this, "ESCAPE", actions::close);
        Keys.within(this, "ctrl shift C", this::copy);
        Keys.within(this, "F5", actions::open);
    }

    public void show(BenchPage shown) {
        page = shown;
        setBackground(Palette.now().sheet());
        if (!shown.open()) {
            return;
        }
        search.write(shown.search());
        boolean asks = !shown.figure().isEmpty();
        blanks.setVisible(asks);
        answers.setVisible(asks);
        found.setVisible(!asks);
        found.show(shown.found());
        List<String> keys = shown.blanks().stream().map(Field::key).toList();
        boolean other = !figure.equals(shown.figure());
        figure = shown.figure();
        if (!keys.equals(built) || other) {
            build(shown.blanks());
            built = keys;
        }
        for (int i = 0; i < boxes.size(); i++) {
            boxes.get(i).show(shown.blanks().get(i));
        }
        answers.show(shown);
        offer(shown.uses());
        copy.setEnabled(!shown.answers().isEmpty());
        if (other && !search.isFocusOwner()) {
            takeKeyboard();
        }
    }

    /** Whoever types on in the search keeps it; Enter leads to the blanks. */
    private void chosen() {
        actions.choose("");
        takeKeyboard();
    }

    private void build(List<Field> shown) {
        blanks.removeAll();
        boxes.clear();
        Onward onward = new Onward(actions, this::next);
        for (Field field : shown) {
            FieldBox box = new FieldBox(field, onward);
            boxes.add(box);
            blanks.add(box, "wmin 0");
        }
        blanks.revalidate();
        blanks.repaint();
    }

    private void offer(List<BenchPage.Use> offered) {
        uses.removeAll();
        for (BenchPage.Use use : offered) {
            JButton button = new JButton("Use as " + use.field() + " of the operation: " + use.text());
            button.setName("figures.use." + use.field());
            button.addActionListener(event -> actions.use(use.field()));
            uses.add(button);
        }
        uses.revalidate();
    }

    private void copy() {
        if (!page.answers().isEmpty()) {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(page.copied()), null);
        }
    }

    /** To the first blank, or to the search where nothing is chosen yet. */
    public void takeKeyboard() {
        if (figure.isEmpty()) {
            search.requestFocusInWindow();
        } else if (!boxes.isEmpty()) {
            boxes.get(0).takeKeyboard();
        }
    }

    /** From a blank to the next; from the last to the first. */
    private void next(String key) {
        boxes.get((built.indexOf(key) + 1) % boxes.size()).takeKeyboard();
    }

    @Override
    public Color getBackground() {
        return Palette.now().sheet();
    }
}
