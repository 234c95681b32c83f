package setwright.job.note;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.Hole.Mouth;
import setwright.job.Size;
import setwright.job.note.Measured.Role;
import setwright.quantity.Angle;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/** What the mouth of a hole is opened to. */
final class Mouths {
    private static final double LEAST_ANGLE = 45;
    private static final double GREATEST_ANGLE = 150;

    private final Draft draft;
    private final @Nullable Size hole;

    Mouths(Draft draft, @Nullable Size hole) {
        this.draft = draft;
        this.hole = hole;
    }

    /** The mouth; null where the note has none. */
    @Nullable
    Mouth mouth() {
        Head head = draft.mouth;
        if (head == null) {
            return null;
        }
        List<Measured> chain = draft.mouthChains.get(0);
        return head == Head.COUNTERSINK ? countersink(chain) : flat(head, chain);
    }

    private Mouth countersink(List<Measured> chain) {
        Measured second = chain.size() > 1 ? chain.get(1) : null;
        Typed<Angle> angle = second == null ? draft.angle : angle(second);
        if (chain.size() > 2) {
            throw Halt.refused(
                    Saying.at(chain.get(2).number()) + " is one size too many; accepted is " + form(Head.COUNTERSINK)
                            + ".",
                    chain.get(2).number());
        }
        if (angle == null) {
            throw Asks.at(
                    draft,
                    chain.get(0).to(),
                    " x ",
                    "Which included angle has the countersink?",
                    draft.context.units() == UnitSystem.INCH ? "82" : "90");
        }
        return new Mouth(Mouth.Form.COUNTERSINK, wider(chain.get(0)), null, angle, null);
    }

    private Typed<Angle> angle(Measured second) {
        Typed<Angle> angle = second.angle();
        if (angle == null) {
            angle = Numbers.guarded(
                    second.number(),
                    () -> draft.numbers.reading().angle(second.number().text()));
        }
        double degrees = Unit.DEG.fromInside(angle.inside());
        if (degrees < LEAST_ANGLE || degrees > GREATEST_ANGLE || second.role() != Role.UNSAID) {
            throw Halt.refused(
                    Saying.at(second.number())
                            + " stands where a countersink has its included angle; 45 to 150 degrees are accepted, as csk 12 x 90.",
                    second.number());
        }
        return angle;
    }

    private Mouth flat(Head head, List<Measured> chain) {
        Roles roles = Roles.of(chain, List.of(Role.DIAMETER, Role.DEPTH), form(head));
        Measured diameter = roles.measured(Role.DIAMETER);
        Size depth = roles.size(Role.DEPTH);
        if (diameter == null) {
            throw Halt.refused(
                    "The " + head.called() + " has a depth and no diameter; accepted is " + form(head) + ".",
                    chain.get(0).number());
        }
        if (depth == null) {
            boolean inch = draft.context.units() == UnitSystem.INCH;
            throw Asks.at(
                    draft,
                    diameter.to(),
                    " x ",
                    "How deep is the " + head.called() + "?",
                    head == Head.SPOTFACE
                            ? (inch ? ".03" : "1")
                            : Asks.round(draft, diameter.length().nominal().inside() * 0.6));
        }
        Mouth.Form form = head == Head.SPOTFACE ? Mouth.Form.SPOTFACE : Mouth.Form.COUNTERBORE;
        return new Mouth(form, wider(diameter), depth, null, null);
    }

    private Size wider(Measured diameter) {
        Size size = diameter.length();
        if (hole != null && size.nominal().inside() <= hole.nominal().inside()) {
            throw Halt.refused(
                    Saying.at(diameter.number()) + " is no wider than the hole of "
                            + hole.nominal().text() + "; a mouth is wider than its hole.",
                    diameter.number());
        }
        return size;
    }

    String likelyHole() {
        double diameter = draft.mouthChains.get(0).get(0).length().nominal().inside();
        return Asks.round(draft, diameter * 0.6) + " thru";
    }

    private static String form(Head head) {
        return switch (head) {
            case COUNTERSINK -> "diameter x angle, as csk 12 x 90 on 6 thru";
            case SPOTFACE -> "diameter x depth, as spotface 20 x 1 on 10 thru";
            default -> "diameter x depth, as cbore 11 x 6.5 on 6.6 thru";
        };
    }
}
