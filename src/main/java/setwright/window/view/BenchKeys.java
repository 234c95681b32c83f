package setwright.window.view;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** The keys of the bench while it has the keyboard. */
final class BenchKeys {
    private static final int PAN = 40;

    private BenchKeys() {}

    static void bind(BenchView bench) {
        bind(bench, "RIGHT", () -> bench.wind(1));
        bind(bench, "LEFT", () -> bench.wind(-1));
        bind(bench, "typed t", bench::tightest);
        bind(bench, "typed s", bench::side);
        bind(bench, "typed 0", bench::fit);
        bind(bench, "typed +", () -> bench.zoom(true));
        bind(bench, "typed -", () -> bench.zoom(false));
        bind(bench, "shift RIGHT", () -> bench.pan(-PAN, 0));
        bind(bench, "shift LEFT", () -> bench.pan(PAN, 0));
        bind(bench, "shift UP", () -> bench.pan(0, PAN));
        bind(bench, "shift DOWN", () -> bench.pan(0, -PAN));
        bench.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                bench.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                bench.repaint();
            }
        });
    }

    private static void bind(BenchView bench, String key, Runnable action) {
        bench.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        bench.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }
}
