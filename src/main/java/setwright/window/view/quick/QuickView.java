package setwright.window.view.quick;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.QuickActions;
import setwright.window.look.Palette;
import setwright.window.model.Field;
import setwright.window.model.Quick;
import setwright.window.state.QuickField;
import setwright.window.view.card.FieldBox;
import setwright.window.view.card.Onward;
import setwright.window.view.part.Keys;

/** One page: nine fields, and beside them what they come to, as they are typed. */
public final class QuickView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient QuickActions actions;
    private final JPanel fields = new JPanel(new MigLayout("fillx, insets 0, gap 0 8, wrap 1", "[grow, fill]", ""));
    private final AnswersView answers = new AnswersView();
    private final JButton keep = new JButton("Keep as a job (Ctrl+Enter)");
    private final JButton back = new JButton("Back to the job (Esc)");
    private final transient List<FieldBox> boxes = new ArrayList<>();
    private List<String> built = List.of();

    /** @param keeps makes a job of it */
    public QuickView(QuickActions actions, Runnable keeps) {
        super(new MigLayout("fill, insets 16 20 12 20, gap 28 12", "[460!, fill][grow, fill]", "[grow, top][28!]"));
        this.actions = actions;
        setName("quick");
        fields.setOpaque(false);
        keep.setName("quick.keep");
        keep.addActionListener(event -> keeps.run());
        back.setName("quick.back");
        back.addActionListener(event -> actions.close());
        add(fields, "cell 0 0, aligny top");
        add(answers, "cell 1 0, grow, wmin 0, hmin 0");
        add(keep, "cell 0 1, split 2, h 28!");
        add(back, "h 28!");
        Keys.within(this, "ESCAPE", actions::close);
        Keys.within(this, "ctrl ENTER", keeps);
    }

    public void show(Quick quick) {
        setBackground(Palette.now().sheet());
        if (!quick.open()) {
            return;
        }
        List<String> keys = quick.fields().stream()
                .map(field -> field.key() + field.isChoice())
                .toList();
        if (!keys.equals(built)) {
            build(quick.fields());
            built = keys;
        }
        for (int i = 0; i < boxes.size(); i++) {
            boxes.get(i).show(quick.fields().get(i));
        }
        answers.show(quick);
        keep.setEnabled(quick.keepable());
    }

    private void build(List<Field> shown) {
        fields.removeAll();
        boxes.clear();
        Onward onward = new Onward(actions, this::next);
        for (Field field : shown) {
            FieldBox box = new FieldBox(field, onward);
            boxes.add(box);
            fields.add(box, "wmin 0");
        }
        fields.revalidate();
    }

    /** Machine and holding seldom change from one question to the next. */
    public void takeKeyboard() {
        if (boxes.size() > QuickField.MATERIAL.ordinal()) {
            boxes.get(QuickField.MATERIAL.ordinal()).takeKeyboard();
        }
    }

    /** From a field to the next; from the last to the first. */
    void next(String key) {
        int at = built.indexOf(key + true) >= 0 ? built.indexOf(key + true) : built.indexOf(key + false);
        boxes.get((at + 1) % boxes.size()).takeKeyboard();
    }

    @Override
    public Color getBackground() {
        return Palette.now().sheet();
    }
}
