package setwright.window.view.bench;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.drawing.Drawing;
import setwright.plan.Plan;
import setwright.window.look.Palette;
import setwright.window.state.Selection;
import setwright.window.view.part.Keys;

/** The bench with what can be done on it: wind along, the tightest place, the end view, larger, smaller, fit, plots. */
public final class BenchPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final BenchView bench = new BenchView();
    private final JPanel strip = new JPanel(new MigLayout("insets 1 6 1 6, gap 2 0", "", "[28!]"));

    /** @param plots leads to the next plot of the line */
    public BenchPanel(Runnable plots) {
        super(new BorderLayout());
        setName("bench");
        button("back", "\u2190 Wind back", "Left", () -> bench.wind(-1));
        button("along", "Wind along \u2192", "Right", () -> bench.wind(1));
        button("tightest", "Tightest place", "T", bench::tightest);
        button("side", "End view", "S", bench::side);
        button("larger", "Larger", "+", () -> bench.zoom(true));
        button("smaller", "Smaller", "-", () -> bench.zoom(false));
        button("fit", "Fit", "0", bench::fit);
        button("plots", "Plots", "P", plots);
        Keys.on(bench, "typed p", plots);
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

    public void show(Optional<Plan> plan, Selection at, Optional<Drawing> plot) {
        strip.setBackground(Palette.now().sheet());
        bench.show(plan, at, plot);
    }

    public void takeKeyboard() {
        bench.requestFocusInWindow();
    }
}
