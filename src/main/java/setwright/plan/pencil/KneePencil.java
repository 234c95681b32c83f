package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.Rows;
import setwright.plan.part.DropOuts;
import setwright.plan.part.Heights;
import setwright.plan.part.KneeUse;
import setwright.plan.part.ToolHeights;
import setwright.reach.DropOut;
import setwright.reach.KneeHeight;
import setwright.reach.KneeHeights;
import setwright.reach.KneeWindow;
import setwright.reach.ToolChange;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Knee height: the fewest heights that serve every operation of a set-up, with room to change tools where there is. */
final class KneePencil {
    /** The quill is not run out further than this only to change a tool over the hole, mm (common practice). */
    private static final double QUILL_FOR_CHANGE = 40;

    private final Rows rows;

    KneePencil(Rows rows) {
        this.rows = rows;
    }

    /** Nose height over the table, quill in, by operation id; an operation that cannot be worked out is left out. */
    Map<String, Double> choose(DrawnSetUp setUp, Heights heights) {
        Map<String, Double> chosen = new LinkedHashMap<>();
        List<KneeWindow> open = new ArrayList<>();
        for (DrawnOperation operation : setUp.operations()) {
            window(setUp, operation, heights).ifPresent(window -> {
                if (window.isOpen()) {
                    open.add(window);
                } else {
                    chosen.put(operation.id(), Math.min(window.low(), machineTop()));
                }
            });
        }
        for (KneeHeight height : KneeHeights.fewest(open)) {
            height.windows().forEach(window -> chosen.put(window.operation(), height.chosen()));
        }
        return chosen;
    }

    private double machineTop() {
        return rows.machine().noseHigh().inside();
    }

    private Optional<KneeWindow> window(DrawnSetUp setUp, DrawnOperation operation, Heights heights) {
        return ToolHeights.of(setUp, operation, heights, rows).map(tool -> {
            KneeWindow window = operation.kneeHeight().pencilled()
                    ? KneeWindow.of(KneeUse.of(operation.id(), operation.kind(), tool), KneeUse.range(rows.machine()))
                    : fixed(operation);
            double top = Math.max(tool.workTop(), heights.jawTop());
            double change = ToolChange.changeFrom(tool.projection(), top, dropOut(setUp, operation));
            return change - window.low() > QUILL_FOR_CHANGE ? window : window.changedFrom(change);
        });
    }

    /** An inked or measured height is a window of one height, which others may share. */
    private static KneeWindow fixed(DrawnOperation operation) {
        double height = operation.kneeHeight().value().inside();
        return new KneeWindow(operation.id(), height, height, height, KneeWindow.Bound.OPEN);
    }

    private DropOut dropOut(DrawnSetUp setUp, DrawnOperation operation) {
        Cutter cutter = rows.cutter(operation.cutter().value()).orElseThrow();
        Holder holder = rows.holder(operation.holder().value()).orElseThrow();
        return DropOuts.of(DropOuts.staysIn(setUp, operation), operation, cutter, holder);
    }
}
