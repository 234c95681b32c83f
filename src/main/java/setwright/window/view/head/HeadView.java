package setwright.window.view.head;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.Head;
import setwright.window.state.Way;
import setwright.window.view.part.BadgeMark;

/** The head: one sentence how the plan stands, and the three ways of working. */
public final class HeadView extends JPanel {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 40;

    private final BadgeMark badge = new BadgeMark();
    private final JLabel sentence = new JLabel();
    private final JLabel working = new JLabel();
    private final transient List<JToggleButton> ways = new ArrayList<>();

    public HeadView(Consumer<Way> choose) {
        super(new MigLayout("fill, insets 0 12 0 8, gap 8", "[]0[grow, fill][]" + "[]".repeat(Way.values().length)));
        setName("head");
        sentence.setName("head.sentence");
        sentence.setFont(sentence.getFont().deriveFont(15f));
        working.setName("head.working");
        add(badge, "cell 0 0, hidemode 2, gapright 8");
        add(sentence, "cell 1 0, wmin 0");
        add(working, "cell 2 0, hidemode 2, wmin 0");
        for (Way way : Way.values()) {
            JToggleButton button = new JToggleButton(way.words());
            button.setName("way." + way.name());
            button.setToolTipText("Ctrl+" + (way.ordinal() + 1));
            button.addActionListener(event -> choose.accept(way));
            ways.add(button);
            add(button, "cell " + (3 + way.ordinal()) + " 0, h 28!, aligny center");
        }
    }

    public void show(Head head, Way way) {
        Color paper = Palette.now().paper();
        setBackground(paper);
        badge.show(head.badge());
        sentence.setText(head.sentence());
        sentence.setToolTipText(head.sentence());
        working.setText(head.working());
        working.setForeground(Palette.now().pencil());
        working.setVisible(!head.working().isEmpty());
        for (Way each : Way.values()) {
            ways.get(each.ordinal()).setSelected(each == way);
        }
    }
}
