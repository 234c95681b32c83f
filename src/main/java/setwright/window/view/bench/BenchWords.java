package setwright.window.view.bench;

import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import setwright.plan.Plan;
import setwright.window.state.Selection;

/** The drawing in words, for those who hear the screen. */
final class BenchWords {
    private BenchWords() {}

    static void describe(JComponent bench, Optional<Plan> plan, Selection at) {
        AccessibleContext context = bench.getAccessibleContext();
        if (context == null) {
            return;
        }
        context.setAccessibleName("Bench");
        plan.flatMap(now -> now.room().operation(at.line()))
                .map(room -> room.nearest())
                .ifPresent(nearest -> context.setAccessibleDescription(nearest.section()
                                .name() + " comes nearest to " + nearest.body().name()));
    }
}
