package setwright.job;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * One clamping of the part.
 *
 * @param up side of the part that faces the spindle
 * @param quarterTurns about the upright axis, anticlockwise seen from above, after the side is up
 * @param holding what holds it
 * @param datum how the zero is found
 * @param zeros second zeros, named
 * @param tilt how far it is tilted then; null: square
 * @param operations in working order; features of this side that none of them makes are added in pencil
 */
public record SetUp(
        String id,
        String title,
        Plannable<Side> up,
        int quarterTurns,
        Holding holding,
        ZeroFinding datum,
        List<NamedZero> zeros,
        @Nullable Tilt tilt,
        List<Operation> operations) {

    public SetUp {
        zeros = List.copyOf(zeros);
        operations = List.copyOf(operations);
    }

    /** A set-up with one zero, not tilted. */
    public SetUp(
            String id,
            String title,
            Plannable<Side> up,
            int quarterTurns,
            Holding holding,
            ZeroFinding datum,
            List<Operation> operations) {
        this(id, title, up, quarterTurns, holding, datum, List.of(), null, operations);
    }

    /**
     * A second zero of a set-up.
     *
     * @param name as it is called at the machine
     * @param x from the first zero
     * @param y from the first zero
     */
    public record NamedZero(String name, Typed<Length> x, Typed<Length> y) {}

    /** With another side up; where it was called after the old one, it is called after the new one. */
    public SetUp turned(Side from, Side to) {
        String called = title.equals(title(from)) ? title(to) : title;
        return withTitle(called).withUp(Plannable.inked(to));
    }

    /** What a set-up is called that nobody named, for instance {@code Top side up}. */
    public static String title(Side up) {
        String side = up.name().toLowerCase(Locale.ROOT);
        return side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1) + " side up";
    }

    /** The same under another id, with the operations under theirs. */
    SetUp withIds(String other, List<Operation> renamed) {
        return new SetUp(other, title, up, quarterTurns, holding, datum, zeros, tilt, renamed);
    }

    public SetUp withUp(Plannable<Side> changed) {
        return new SetUp(id, title, changed, quarterTurns, holding, datum, zeros, tilt, operations);
    }

    public SetUp withHolding(Holding changed) {
        return new SetUp(id, title, up, quarterTurns, changed, datum, zeros, tilt, operations);
    }

    public SetUp withDatum(ZeroFinding changed) {
        return new SetUp(id, title, up, quarterTurns, holding, changed, zeros, tilt, operations);
    }

    public SetUp withOperations(List<Operation> changed) {
        return new SetUp(id, title, up, quarterTurns, holding, datum, zeros, tilt, changed);
    }

    public SetUp withQuarterTurns(int changed) {
        return new SetUp(id, title, up, changed, holding, datum, zeros, tilt, operations);
    }

    public SetUp withTitle(String changed) {
        return new SetUp(id, changed, up, quarterTurns, holding, datum, zeros, tilt, operations);
    }

    public SetUp withTilt(@Nullable Tilt changed) {
        return new SetUp(id, title, up, quarterTurns, holding, datum, zeros, changed, operations);
    }
}
