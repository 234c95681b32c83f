package setwright.window.view.bench;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import setwright.window.view.part.Keys;

/** The keys of the bench while it has the keyboard. */
final class BenchKeys {
    private static final int PAN = 40;

    private BenchKeys() {}

    static void bind(BenchView bench) {
        Keys.on(bench, "RIGHT", () -> bench.wind(1));
        Keys.on(bench, "LEFT", () -> bench.wind(-1));
        Keys.on(bench, "typed t", bench::tightest);
        Keys.on(bench, "typed s", bench::side);
        Keys.on(bench, "typed 0", bench::fit);
        Keys.on(bench, "typed +", () -> bench.zoom(true));
        Keys.on(bench, "typed -", () -> bench.zoom(false));
        Keys.on(bench, "shift RIGHT", () -> bench.pan(-PAN, 0));
        Keys.on(bench, "shift LEFT", () -> bench.pan(PAN, 0));
        Keys.on(bench, "shift UP", () -> bench.pan(0, PAN));
        Keys.on(bench, "shift DOWN", () -> bench.pan(0, -PAN));
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
}
