package setwright.plan.hold;

import java.util.Locale;
import java.util.Optional;
import setwright.holding.Friction;
import setwright.holding.GripAsked;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.Packing;
import setwright.holding.ViseGrip;
import setwright.holding.balance.Answer;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.Vise;

/** The balance of a part in a vise, made once for a set-up and asked for every operation. */
record ViseBalance(FrictionBalance expected, FrictionBalance pessimistic, Value given) {
    private static final double GRAVITY = 9.80665;

    static Optional<ViseBalance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        return switch (setUp.holding().kind()) {
            case VISE -> {
                DrawnVise holding = (DrawnVise) setUp.holding();
                yield rows.vise(holding.vise().value())
                        .filter(vise -> stage.heights().gripDepth() > 0)
                        .map(vise -> inVise(setUp.id(), holding, vise, stage, rows));
            }
        };
    }

    private static ViseBalance inVise(String id, DrawnVise holding, Vise vise, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        Held held = new Held(
                heights.length(),
                heights.depth(),
                heights.gripDepth(),
                holding.offset().value().inside());
        GripAsked asked = asked(holding.grip().value());
        Jaws jaws = Jaws.of(vise, JawFriction.of(vise.jawFace(), rows));
        ViseGrip grip = ViseGrip.of(held, jaws, asked.force(vise)).on(under(holding, held, rows));
        Load weight = Load.weight(
                GRAVITY
                        * stage.start().bulk().volume()
                        * rows.material().density().inside(),
                new Vector(heights.length() / 2, heights.depth() / 2, (heights.startTop() - heights.partBottom()) / 2));
        Value given = Given.of("grip, " + asked.word(), grip.force(Outlook.EXPECTED), Unit.KN, id + "/holding/grip");
        return new ViseBalance(
                new FrictionBalance(grip.grip(Outlook.EXPECTED, weight)),
                new FrictionBalance(grip.grip(Outlook.PESSIMISTIC, weight)),
                given);
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

    Answer answer(Outlook outlook, java.util.List<Load> loads) {
        return switch (outlook) {
            case EXPECTED -> expected.answer(loads);
            case PESSIMISTIC -> pessimistic.answer(loads);
        };
    }
}
