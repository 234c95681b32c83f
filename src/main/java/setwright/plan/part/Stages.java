package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Attitude;
import setwright.geometry.Box;
import setwright.geometry.Motion;
import setwright.geometry.Placement;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Stock;
import setwright.job.Block;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Size;
import setwright.job.Tilt;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Carries the stock through every operation of every set-up, and lays path and tool beside it. */
public final class Stages {
    private static final String TILTED = "what is cut on a tilted part: it stays on the part in later set-ups";

    private final DrawnUp drawnUp;
    private final Rows rows;
    private final List<NotChecked> missing = new ArrayList<>();

    private Stages(DrawnUp drawnUp, Rows rows) {
        this.drawnUp = drawnUp;
        this.rows = rows;
    }

    public static PartPlan of(DrawnUp drawnUp, Rows rows) {
        return new Stages(drawnUp, rows).through();
    }

    private PartPlan through() {
        List<SetUpStage> found = new ArrayList<>();
        Point3 size = largest(drawnUp.job().plan().blank().envelope());
        Stock part = BlankSolid.of(drawnUp.job().plan().blank());
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            Laid laid = Laid.of(setUp);
            Optional<Heights> heights = Seats.of(drawnUp.job(), laid, setUp.holding(), rows);
            if (heights.isEmpty()) {
                missing.add(new NotChecked("holder-meets-jaw", setUp.id(), "", "a device that holds the part"));
            } else if (laid.tilted()) {
                missing.add(new NotChecked("tilted-stock", setUp.id(), "", TILTED));
                found.add(stage(setUp, heights.get(), tilted(part, setUp, size, heights.get())));
            } else {
                Placement placement = onItsFoot(part, placement(setUp, heights.get(), size), heights.get());
                Stock start = part.placed(placement);
                SetUpStage stage = stage(
                        setUp,
                        heights.get().startingAt(start.top() - heights.get().partBottom()),
                        start);
                found.add(stage);
                part = end(stage).placed(placement.inverse());
            }
        }
        return new PartPlan(found, missing);
    }

    /** The part tilted over the place where it sits, let down until it stands. */
    private static Stock tilted(Stock part, DrawnSetUp setUp, Point3 size, Heights heights) {
        Motion laid = Motion.of(placement(setUp, heights, size));
        Point3 middle = new Point3(
                (heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2, heights.partBottom());
        Stock turned = part.moved(laid.then(turn(setUp.tilt(), middle)));
        Box box = turned.blank().box();
        Point3 down = middle.minus(Point3.of(box.plan().middle(), box.zLow()));
        return turned.moved(Motion.shift(down));
    }

    private static Motion turn(@Nullable Tilt tilt, Point3 place) {
        if (tilt == null) {
            return Motion.NONE;
        }
        double angle = tilt.angle().inside();
        return switch (tilt.about()) {
            case X -> Motion.aboutX(place, angle);
            case Y -> Motion.aboutY(place, angle);
        };
    }

    private static Stock end(SetUpStage stage) {
        List<OperationStage> operations = stage.operations();
        return operations.isEmpty()
                ? stage.start()
                : operations.get(operations.size() - 1).after();
    }

    /** The same placement, let down so far as earlier set-ups took off where the part now stands. */
    private static Placement onItsFoot(Stock part, Placement placement, Heights heights) {
        List<Prism> layers = part.placed(placement).layers();
        double gap = layers.isEmpty() ? 0 : layers.get(0).zLow() - heights.partBottom();
        return gap == 0 ? placement : placement.then(Placement.shift(new Point3(0, 0, -gap)));
    }

    /** The largest blank stands with its middle over the middle of where the nominal part sits. */
    private static Placement placement(DrawnSetUp setUp, Heights heights, Point3 size) {
        Attitude attitude = new Attitude(setUp.up().value(), setUp.quarterTurns());
        Point3 lying = attitude.size(size);
        double x = (heights.left() + heights.right() - lying.x()) / 2;
        double y = (heights.front() + heights.back() - lying.y()) / 2;
        return Placement.resting(attitude, size, new Point3(x, y, heights.partBottom()));
    }

    private static Point3 largest(Block block) {
        return new Point3(
                nominal(block.length()), nominal(block.depth()), block.height().greatestMm());
    }

    private static double nominal(Size size) {
        return size.nominal().inside();
    }

    private SetUpStage stage(DrawnSetUp setUp, Heights heights, Stock start) {
        List<OperationStage> operations = new ArrayList<>();
        Stock now = start;
        for (DrawnOperation operation : setUp.operations()) {
            Optional<OperationStage> stage = stage(setUp, operation, heights, now);
            if (stage.isEmpty()) {
                missing.add(new NotChecked(
                        "holder-meets-jaw", setUp.id(), operation.id(), "a cutter in a holder of the shop"));
                continue;
            }
            operations.add(stage.get());
            now = stage.get().after();
        }
        return new SetUpStage(setUp.id(), heights, Fixtures.of(setUp.holding(), heights, rows), start, operations);
    }

    private Optional<OperationStage> stage(DrawnSetUp setUp, DrawnOperation operation, Heights heights, Stock before) {
        Optional<Cutter> cutter = rows.cutter(operation.cutter().value());
        Optional<Holder> holder = rows.holder(operation.holder().value());
        return ToolHeights.of(setUp, operation, heights, rows).map(tool -> {
            OperationWay way =
                    OperationWay.of(setUp, operation, cutter.orElseThrow(), heights, tool, drawnUp.job(), before);
            return new OperationStage(
                    operation.id(),
                    before,
                    way.cut(before),
                    ToolStacks.of(operation, cutter.orElseThrow(), holder.orElseThrow(), rows.machine()),
                    way.path(),
                    way.spots(),
                    tool.workTop(),
                    tool.lowest(),
                    tool.crossing(),
                    tool.projection(),
                    way.cutLength(),
                    way.runs());
        });
    }
}
