package setwright.window.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;
import setwright.drawing.Drawing;
import setwright.drawing.Plot;
import setwright.drawing.Plots;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/** The plot that lies over the bench; drawn in the background. */
final class PlotDesk {
    private final Searched<Map<Plot, Drawing>> searched;
    private final Runnable changed;
    private @Nullable Plot shown;

    PlotDesk(Executor deliver, Runnable changed) {
        searched = new Searched<>(PlotDesk::draw, Map.of(), deliver, changed);
        this.changed = changed;
    }

    private static Map<Plot, Drawing> draw(Plan plan, String line) {
        return Plots.of(plan, line, new Printing(plan.job().plan().units()));
    }

    /** The next plot of the line; after the last one the set-up again. */
    void next(Optional<Plan> plan, String line) {
        Plot before = shown;
        List<Plot> there = List.copyOf(searched.found(line).keySet());
        int next = before == null ? 0 : there.indexOf(before) + 1;
        boolean last = before != null && (next == 0 || next >= there.size());
        shown = last ? null : there.isEmpty() ? Plot.FORCE : there.get(next);
        look(plan, line);
        changed.run();
    }

    /** The set-up again. */
    boolean close() {
        boolean open = shown != null;
        shown = null;
        return open;
    }

    /** Nothing is drawn while no plot is asked for. */
    void look(Optional<Plan> plan, String line) {
        if (shown != null) {
            searched.look(plan, line);
        }
    }

    /** Empty where the set-up is to be seen; a line without the plot asked for shows its first. */
    Optional<Drawing> plot(String line) {
        Map<Plot, Drawing> there = searched.found(line);
        return Optional.ofNullable(shown)
                .flatMap(plot -> Optional.ofNullable(there.get(plot))
                        .or(() -> there.values().stream().findFirst()));
    }

    boolean busy() {
        return searched.busy();
    }

    void end() {
        searched.end();
    }
}
