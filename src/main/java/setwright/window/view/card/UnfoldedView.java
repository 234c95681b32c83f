package setwright.window.view.card;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.model.Field;
import setwright.window.model.Figure;
import setwright.window.model.Unfolded;

/** The fields of the unfolded line, what binds first, and its worked figures. */
final class UnfoldedView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient CardActions actions;
    private final transient List<FieldBox> fields = new ArrayList<>();
    private final transient List<FigureRow> figures = new ArrayList<>();
    private final JButton more = new JButton();
    private final JLabel limits = new JLabel();
    private final JTextArea complaint = new JTextArea();
    private final LimitRuleView rule = new LimitRuleView();
    private List<String> built = List.of();
    private transient Unfolded shown = Unfolded.NOTHING;
    private String chosen = "";

    UnfoldedView(CardActions actions) {
        super(new MigLayout("fillx, insets 6 12 8 12, gap 0, wrap 1", "[grow, fill]", ""));
        this.actions = actions;
        setName("unfolded");
        limits.setName("limits");
        complaint.setName("complaint");
        complaint.setEditable(false);
        complaint.setFocusable(false);
        complaint.setOpaque(false);
        complaint.setLineWrap(true);
        complaint.setWrapStyleWord(true);
        more.setName("more");
        more.setHorizontalAlignment(SwingConstants.LEADING);
        more.putClientProperty("JButton.buttonType", "borderless");
        more.addActionListener(event -> actions.open("more"));
    }

    void show(Unfolded unfolded) {
        shown = unfolded;
        setBackground(Palette.now().sheet());
        List<String> keys = keys(unfolded);
        if (!keys.equals(built)) {
            build(unfolded);
            built = keys;
        }
        List<Field> all = unfolded.fields().stream().flatMap(List::stream).toList();
        for (int i = 0; i < all.size(); i++) {
            fields.get(i).show(all.get(i));
        }
        for (int i = 0; i < figures.size(); i++) {
            figures.get(i).show(unfolded.figures().get(i));
        }
        complaint.setText(unfolded.complaint());
        complaint.setVisible(!unfolded.complaint().isEmpty());
        complaint.setForeground(Palette.now().ink());
        limits.setText(unfolded.limits());
        rule();
        more.setText("More: " + unfolded.more());
        more.setForeground(Palette.now().pencil());
        limits.setForeground(Palette.now().pencil());
    }

    /** Whether there is such a field; then it has the keyboard. */
    boolean takeKeyboard(String key) {
        for (FieldBox box : fields) {
            if (box.key().equals(key) && isDisplayable()) {
                box.takeKeyboard();
                return true;
            }
        }
        return false;
    }

    private void choose(String field) {
        chosen = field;
        rule();
    }

    private void rule() {
        rule.show(shown.rule(chosen).orElse(null));
    }

    private void build(Unfolded unfolded) {
        removeAll();
        fields.clear();
        figures.clear();
        unfolded.fields().forEach(row -> add(row(row), "gapbottom 6, wmin 0"));
        add(complaint, "wmin 0, hidemode 3, gapbottom 4");
        if (!unfolded.more().isEmpty()) {
            add(more, "h 28!, wmin 0");
        }
        add(limits, "gapy 2 4, wmin 0");
        add(rule, "wmin 0, hidemode 3, gapbottom 4");
        for (Figure figure : unfolded.figures()) {
            FigureRow row = new FigureRow(figure, actions);
            figures.add(row);
            add(row, "wmin 0");
        }
        revalidate();
    }

    private JPanel row(List<Field> row) {
        JPanel panel = new JPanel(new MigLayout("fillx, insets 0, gap 8 0", "[grow, fill, sg]".repeat(row.size()), ""));
        panel.setOpaque(false);
        for (Field field : row) {
            FieldBox box = new FieldBox(field, actions);
            fields.add(box);
            box.whenChosen(() -> choose(box.key()));
            panel.add(box, "wmin 0");
        }
        return panel;
    }

    /** What has to be built anew when it changes: which fields and figures there are. */
    private static List<String> keys(Unfolded unfolded) {
        List<String> keys = new ArrayList<>();
        unfolded.fields().forEach(row -> {
            keys.add("row");
            row.forEach(field -> keys.add(field.key() + field.isChoice()));
        });
        unfolded.figures().forEach(figure -> keys.add("figure " + figure.key() + figure.opens()));
        keys.add("more " + !unfolded.more().isEmpty());
        return keys;
    }
}
