package setwright.window.view.bench;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.plan.Plan;
import setwright.window.look.Palette;
import setwright.window.state.Selection;

/** The bench with what can be done on it: wind along, the tightest place, the end view, larger, smaller, fit. */
public final class BenchPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final BenchView bench = new BenchView();
    private final JPanel strip = new JPanel(new MigLayout("insets 1 6 1 6, gap 2 0", "", "[28!]"));

    public BenchPanel() {
        super(new BorderLayout());
        setName("bench");
        button("back", "\u2190 Wind back", "Left", () -> bench.wind(-1));
        button("along", "Wind along \u2192", "Right", () -> bench.wind(1));
        button("tightest", "Tightest place", "T", bench::tightest);
        button("side", "End view", "S", bench::side);
        button("larger", "Larger", "+", () -> bench.zoom(true));
        button("smaller", "Smaller", "-", () -> bench.zoom(false));
        button("fit", "Fit", "0", bench::fit);
        add(bench, BorderLayout.CENTER);
        add(strip, BorderLayout.SOUTH);
    }

    private void button(String name, String text, String key, Runnable action) {
        JButton button = new JButton(text);
        button.setName("bench." + name);
        button.setToolTipText("Key on the drawing: " + key);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.addActionListener(event -> action.run());
        strip.add(button, "h 28!");
    }

    public void show(Optional<Plan> plan, Selection at) {
        strip.setBackground(Palette.now().sheet());
        bench.show(plan, at);
    }

    public void takeKeyboard() {
        bench.requestFocusInWindow();
    }
}
