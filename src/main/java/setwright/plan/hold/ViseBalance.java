package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.holding.EndStop;
import setwright.holding.Friction;
import setwright.holding.GripAsked;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.Packing;
import setwright.holding.VeeGrip;
import setwright.holding.ViseGrip;
import setwright.holding.ViseGrip.Moving;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.job.Blank;
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
import setwright.shop.VeeJaws;
import setwright.shop.Vise;

/** The balance of a part in a vise; of several side by side each has its share of the grip. */
final class ViseBalance {
    private ViseBalance() {}

    static Optional<Balance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        DrawnVise holding = (DrawnVise) setUp.holding();
        return rows.vise(holding.vise().value())
                .filter(vise -> stage.heights().gripDepth() > 0 && touched(holding, stage.heights(), vise))
                .map(vise -> inVise(setUp.id(), holding, vise, stage, rows));
    }

    private static boolean touched(DrawnVise holding, Heights heights, Vise vise) {
        double half = vise.jawWidth().inside() / 2;
        return JawPlates.middles(holding).stream()
                .allMatch(middle -> heights.left() < middle + half && heights.right() > middle - half);
    }

    private static Balance inVise(String id, DrawnVise holding, Vise vise, SetUpStage stage, Rows rows) {
        Heights heights = stage.heights();
        GripAsked asked = asked(holding.grip().value());
        JawPlates plates = JawPlates.of(holding, vise, rows);
        Friction friction = plates.soft() ? JawFriction.soft(rows) : JawFriction.of(vise.jawFace(), rows);
        double force = asked.force(vise) / Math.max(1, holding.parts().value());
        Load weight = Balance.weight(stage, rows);
        Value given = Given.of("grip, " + asked.word(), force, Unit.KN, id + "/holding/grip");
        Optional<VeeGrip> vee = plates.vee().flatMap(row -> inVee(row, stage, rows, force, friction));
        if (vee.isPresent()) {
            return Balance.of(outlook -> vee.get().grip(outlook, weight), given);
        }
        List<ViseGrip> grips = JawPlates.middles(holding).stream()
                .map(middle -> in(holding, vise, plates, heights, middle, rows, force, friction))
                .toList();
        return Balance.of(outlook -> together(grips, outlook, weight), given);
    }

    /** A round bar in jaws with a vee, lying along them or standing in them. */
    private static Optional<VeeGrip> inVee(VeeJaws row, SetUpStage stage, Rows rows, double force, Friction friction) {
        Heights heights = stage.heights();
        Blank.Kind kind = rows.job().plan().blank().kind();
        if (kind != Blank.Kind.ROUND_BAR && kind != Blank.Kind.TUBE) {
            return Optional.empty();
        }
        boolean standing = Math.abs(heights.length() - heights.depth()) < 1e-6
                && Math.abs(heights.startTop() - heights.partBottom() - heights.depth()) > 1e-6;
        return Optional.of(new VeeGrip(
                heights.depth(),
                heights.length(),
                standing,
                heights.gripDepth(),
                row.angle().inside(),
                force,
                friction));
    }

    private static ViseGrip in(
            DrawnVise holding,
            Vise vise,
            JawPlates plates,
            Heights heights,
            double middle,
            Rows rows,
            double force,
            Friction friction) {
        double offset = (heights.left() + heights.right()) / 2 - middle;
        Held held = new Held(heights.length(), heights.depth(), heights.gripDepth(), offset);
        ViseGrip bare = ViseGrip.of(held, Jaws.of(vise, friction), force)
                .by(holding.between().value() == ViseHolding.Between.ROUND_BAR ? Moving.BAR : Moving.FLAT)
                .on(plates.cut() > 0 ? Packing.parallels(held, 0) : under(holding, held, offset, rows));
        return endStop(holding, heights, rows).map(bare::against).orElse(bare);
    }

    /** The contacts of all vises that hold one part, each named after its vise. */
    private static Grip together(List<ViseGrip> grips, Outlook outlook, Load weight) {
        if (grips.size() == 1) {
            return grips.get(0).grip(outlook, weight);
        }
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < grips.size(); i++) {
            String which = " of vise " + (i + 1);
            for (Contact one : grips.get(i).contacts(outlook)) {
                contacts.add(one.called(which));
            }
        }
        return new Grip(contacts, weight);
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

    /** A pair of parallels in the middle of its jaws, as far as the part is over it. */
    private static Packing under(DrawnVise holding, Held held, double offset, Rows rows) {
        double length = rows.parallels(holding.parallels().value())
                .map(row -> row.length().inside())
                .orElse(held.length());
        double inset = holding.onParallels() ? holding.parallelInset().value().inside() : 0;
        double middle = holding.vises().value() > 1 ? held.length() / 2 - offset : held.length() / 2;
        double left = Math.max(0, middle - length / 2);
        double right = Math.min(held.length(), middle + length / 2);
        return left < right
                ? new Packing(left, right, inset, held.depth() - inset, Friction.GROUND_PARALLEL)
                : Packing.parallels(held, inset);
    }

    private static GripAsked asked(ViseHolding.GripAsked grip) {
        return GripAsked.valueOf(grip.name().toUpperCase(Locale.ROOT));
    }
}
