package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Operation;
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

    private final Drafting drafting;
    private final Rows rows;

    KneePencil(Drafting drafting) {
        this.drafting = drafting;
        rows = drafting.rows();
    }

    /** The set-up with its pencilled knee heights; an operation that cannot be worked out stays as it is. */
    DrawnSetUp set(DrawnSetUp setUp, Heights heights) {
        List<String> tooDeep = new ArrayList<>();
        DrawnSetUp traded = setOut(setUp, heights);
        Map<String, Double> chosen = choose(traded, heights, tooDeep);
        return traded.withOperations(traded.operations().stream()
                .map(operation -> tooDeep.contains(operation.id()) ? inBites(operation) : operation)
                .map(operation -> at(operation, chosen))
                .toList());
    }

    /** Tools in holes a little further out where that saves a knee height. */
    private DrawnSetUp setOut(DrawnSetUp setUp, Heights heights) {
        List<KneeWindow> windows = new ArrayList<>();
        Map<String, Double> more = new LinkedHashMap<>();
        for (DrawnOperation operation : setUp.operations()) {
            window(setUp, operation, heights).filter(KneeWindow::isOpen).ifPresent(window -> {
                windows.add(window);
                double most = Math.floor(further(operation) / drafting.settable()) * drafting.settable();
                more.put(operation.id(), Math.min(most, Math.max(0, machineTop() - window.high())));
            });
        }
        Map<String, Double> out = KneeHeights.setOut(windows, more);
        return setUp.withOperations(setUp.operations().stream()
                .map(operation -> out.containsKey(operation.id())
                        ? operation.out(drafting.length(
                                drafting.set(operation.stickOut().value().inside() + out.get(operation.id()))))
                        : operation)
                .toList());
    }

    private double further(DrawnOperation operation) {
        Optional<Holder> holder = rows.holder(operation.holder().value());
        return rows.cutter(operation.cutter().value())
                .flatMap(cutter -> holder.map(row -> FurtherOut.most(operation, cutter, row)))
                .orElse(0.0);
    }

    private DrawnOperation at(DrawnOperation operation, Map<String, Double> chosen) {
        Double height = chosen.get(operation.id());
        boolean open = operation.kneeHeight().pencilled();
        return height == null || !open ? operation : operation.atKnee(drafting.length(height));
    }

    /** A drill may stop half way and go on; a bore, reamed hole or thread may not. */
    private static DrawnOperation inBites(DrawnOperation operation) {
        boolean may = operation.kind() == Operation.Kind.DRILL
                && operation.method().pencilled()
                && operation.kneeHeight().pencilled();
        return may ? operation.inBites() : operation;
    }

    /** Nose height over the table, quill in, by operation id. */
    private Map<String, Double> choose(DrawnSetUp setUp, Heights heights, List<String> tooDeep) {
        Map<String, Double> chosen = new LinkedHashMap<>();
        List<KneeWindow> open = new ArrayList<>();
        for (DrawnOperation operation : setUp.operations()) {
            window(setUp, operation, heights).ifPresent(window -> {
                if (window.isOpen()) {
                    open.add(window);
                } else {
                    chosen.put(operation.id(), Math.min(window.low(), machineTop()));
                    if (window.bound() == KneeWindow.Bound.QUILL_STROKE) {
                        tooDeep.add(operation.id());
                    }
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
