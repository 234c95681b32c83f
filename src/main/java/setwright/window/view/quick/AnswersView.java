package setwright.window.view.quick;

import java.awt.Font;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.Quick;

/** What the nine fields come to: verdict, figures, what was found, what was not checked. */
final class AnswersView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 20f;

    private final JTextArea verdict = words("quick.verdict");
    private final JPanel figures =
            new JPanel(new MigLayout("fillx, insets 0, gap 14 8, wrap 3", "[70!][180!][grow, fill]", ""));
    private final JTextArea found = words("quick.found");
    private final JTextArea notChecked = words("quick.notChecked");
    private final JTextArea assumed = words("quick.assumed");

    AnswersView() {
        super(new MigLayout("fillx, insets 0, gap 0 12, wrap 1, hidemode 3", "[grow, fill]", ""));
        setName("quick.answers");
        setOpaque(false);
        figures.setOpaque(false);
        for (JTextArea area : List.of(verdict, found, notChecked, assumed)) {
            if (area == found) {
                add(figures, "wmin 0");
            }
            add(area, "wmin 0");
        }
    }

    private static JTextArea words(String name) {
        JTextArea words = new JTextArea();
        words.setName(name);
        words.setEditable(false);
        words.setFocusable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setBorder(javax.swing.BorderFactory.createEmptyBorder());
        return words;
    }

    void show(Quick quick) {
        boolean readable = quick.complaint().isEmpty();
        write(verdict, readable ? quick.verdict() : quick.complaint());
        verdict.setFont(getFont().deriveFont(Font.BOLD));
        write(found, String.join("\n", quick.cautions()));
        write(notChecked, quick.notChecked());
        write(assumed, quick.assumed());
        notChecked.setForeground(Palette.now().pencil());
        assumed.setForeground(Palette.now().pencil());
        figures.removeAll();
        quick.answers().forEach(this::add);
        figures.revalidate();
        repaint();
    }

    private static void write(JTextArea area, String text) {
        area.setForeground(Palette.now().ink());
        area.setVisible(!text.isEmpty());
        if (!area.getText().equals(text)) {
            area.setText(text);
        }
    }

    private void add(Quick.Answer answer) {
        JLabel name = label(answer.name());
        JLabel printed = label(answer.printed());
        printed.setName("quick.answer." + answer.key());
        printed.setFont(printed.getFont().deriveFont(LARGE));
        JLabel said = label(answer.said());
        name.setForeground(Palette.now().pencil());
        said.setForeground(Palette.now().pencil());
        figures.add(name, "aligny baseline");
        figures.add(printed, "aligny baseline");
        figures.add(said, "aligny baseline, wmin 0");
    }

    private static JLabel label(String text) {
        JLabel label = new JLabel(text);
        label.setForeground(Palette.now().ink());
        return label;
    }
}
