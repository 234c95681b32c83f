package setwright.window.view.figure;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.BenchPage;

/** The question as a sentence, what it comes to, and how. */
final class AnswerView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 20f;

    private final JTextArea sentence = words("figures.sentence");
    private final JPanel answers =
            new JPanel(new MigLayout("fillx, insets 0, gap 14 8, wrap 2", "[190!][grow, fill]", ""));
    private final JTextArea said = words("figures.said");
    private final JTextArea worked = words("figures.worked");

    AnswerView() {
        super(new MigLayout("fillx, insets 0, gap 0 12, wrap 1, hidemode 3", "[grow, fill]", ""));
        setName("figures.answers");
        setOpaque(false);
        answers.setOpaque(false);
        add(sentence, "wmin 0");
        add(answers, "wmin 0");
        add(said, "wmin 0");
        add(worked, "wmin 0");
    }

    void show(BenchPage page) {
        write(sentence, page.sentence());
        sentence.setFont(getFont().deriveFont(Font.BOLD));
        write(said, page.said());
        write(worked, page.worked());
        worked.setForeground(Palette.now().pencil());
        answers.removeAll();
        for (BenchPage.Answer answer : page.answers()) {
            JLabel name = new JLabel(answer.name());
            name.setForeground(Palette.now().pencil());
            JTextArea printed = words("figures.answer." + answer.name());
            printed.setFont(getFont().deriveFont(LARGE));
            write(printed, answer.printed());
            answers.add(name, "aligny top");
            answers.add(printed, "wmin 0");
        }
        answers.revalidate();
        repaint();
    }

    private static JTextArea words(String name) {
        JTextArea words = new JTextArea();
        words.setName(name);
        words.setEditable(false);
        words.setFocusable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setBorder(BorderFactory.createEmptyBorder());
        return words;
    }

    private static void write(JTextArea area, String text) {
        area.setForeground(Palette.now().ink());
        area.setVisible(!text.isEmpty());
        if (!area.getText().equals(text)) {
            area.setText(text);
        }
    }
}
