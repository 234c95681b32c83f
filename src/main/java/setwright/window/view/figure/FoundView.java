package setwright.window.view.figure;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.BenchPage;

/** The figures that fit what was typed, the best first. */
final class FoundView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<String> chosen;

    FoundView(Consumer<String> chosen) {
        super(new MigLayout("fillx, insets 0, gap 14 4, wrap 2", "[190!, fill][grow, fill]", ""));
        this.chosen = chosen;
        setName("figures.found");
        setOpaque(false);
    }

    void show(List<BenchPage.Found> found) {
        removeAll();
        for (BenchPage.Found each : found) {
            JButton name = new JButton(each.name());
            name.setName("figures.found." + each.name());
            name.setHorizontalAlignment(SwingConstants.LEADING);
            name.addActionListener(event -> chosen.accept(each.name()));
            JLabel sentence = new JLabel(each.sentence());
            sentence.setForeground(Palette.now().pencil());
            add(name);
            add(sentence, "wmin 0");
        }
        if (found.isEmpty()) {
            add(new JLabel("No bench figure is called so; fewer letters find more."), "span 2");
        }
        revalidate();
        repaint();
    }
}
