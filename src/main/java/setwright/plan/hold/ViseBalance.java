package setwright.plan.hold;

import java.util.Locale;
import java.util.Optional;
import setwright.holding.EndStop;
import setwright.holding.Friction;
import setwright.holding.GripAsked;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.Packing;
import setwright.holding.ViseGrip;
import setwright.holding.balance.Load;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.Edge;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.JawPlates;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StopPlace;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.Vise;

/** The balance of a part in a vise; of several side by side each has its share of the grip. */
final class ViseBalance {
    private ViseBalance() {}

    static Optional<Balance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        DrawnVise holding = (DrawnVise) setUp.holding();
        return rows.vise(holding.vise().value())
                .filter(vise -> stage.heights().gripDepth() > 0 && touched(stage.heights(), vise))
                .map(vise -> inVise(setUp.id(), holding, vise, stage, rows));
    }

    private static boolean touched(Heights heights, Vise vise) {
        double half = vise.jawWidth().inside() / 2;
        return heights.left() < half && heights.right() > -half;
    }

    private static Balance inVise(String id, DrawnVise holding, Vise vise, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        double offset = (heights.left() + heights.right()) / 2;
        Held held = new Held(heights.length(), heights.depth(), heights.gripDepth(), offset);
        GripAsked asked = asked(holding.grip().value());
        boolean soft = JawPlates.of(holding, vise, rows).soft();
        Friction friction = soft ? JawFriction.soft(rows) : JawFriction.of(vise.jawFace(), rows);
        double force = asked.force(vise) / Math.max(1, holding.parts().value());
        ViseGrip bare = ViseGrip.of(held, Jaws.of(vise, friction), force).on(under(holding, held, rows));
        ViseGrip grip = endStop(holding, heights, rows).map(bare::against).orElse(bare);
        Load weight = Balance.weight(stage, rows);
        Value given = Given.of("grip, " + asked.word(), grip.force(Outlook.EXPECTED), Unit.KN, id + "/holding/grip");
        return Balance.of(outlook -> grip.grip(outlook, weight), given);
    }

    /** The first stop that stands at an end. */
    private static Optional<EndStop> endStop(DrawnVise holding, Heights heights, Rows rows) {
        return holding.stops().stream()
                .filter(stop -> stop.side() == Edge.LEFT || stop.side() == Edge.RIGHT)
                .findFirst()
                .map(stop -> new EndStop(
                        stop.side() == Edge.LEFT ? EndStop.End.LEFT : EndStop.End.RIGHT,
                        stop.along().inside(),
                        StopPlace.of(stop, heights, rows).high() - heights.partBottom(),
                        Friction.GROUND_PARALLEL));
    }

    private static Packing under(DrawnVise holding, Held held, Rows rows) {
        double length = rows.parallels(holding.parallels().value())
                .map(row -> row.length().inside())
                .orElse(held.length());
        double inset = holding.onParallels() ? holding.parallelInset().value().inside() : 0;
        double spare = Math.max(0, (held.length() - length) / 2);
        return new Packing(spare, held.length() - spare, inset, held.depth() - inset, Friction.GROUND_PARALLEL);
    }

    private static GripAsked asked(ViseHolding.GripAsked grip) {
        return GripAsked.valueOf(grip.name().toUpperCase(Locale.ROOT));
    }
}
