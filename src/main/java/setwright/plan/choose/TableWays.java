package setwright.plan.choose;

import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Heading;
import setwright.job.DrawnTable;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.job.TableField;
import setwright.job.TableHolding;
import setwright.job.TableHolding.Seat;
import setwright.plan.part.TableSlots;
import setwright.shop.Jack;
import setwright.shop.MachineTable;
import setwright.shop.Parallels;
import setwright.shop.SetUpBlocks;

/** Strapped to the table: straight on it, packed up, or lying in a T-slot. */
final class TableWays implements WaysToHold {
    /** A strap on a face that is cut is in the way of the cutter. */
    static final String TOP_IS_CUT = "Straps would lie on the face that is cut; they would have to be moved in turn";

    static final String ROLLS = "A round bar rolls on a flat: lay it in a slot or in V-blocks";

    @Override
    public Stream<Arrangement> of(ToHold part) {
        return Stream.of(Seat.values())
                .map(seat -> new Arrangement(
                        text(seat), ink(part, seat), ToHold.reasons(against(part, seat)), now(part, seat)));
    }

    private static String text(Seat seat) {
        return switch (seat) {
            case TABLE -> "Straps, straight on the table";
            case PACKING -> "Straps, packed up off the table";
            case T_SLOT -> "Straps, lying in a T-slot";
            case JACKS -> "Straps, on jacks set to scribed lines";
        };
    }

    private static Optional<String> against(ToHold part, Seat seat) {
        if (part.topIsCut()) {
            return Optional.of(TOP_IS_CUT);
        }
        if (part.barAlong() && (seat == Seat.TABLE || seat == Seat.PACKING)) {
            return Optional.of(ROLLS);
        }
        return switch (seat) {
            case TABLE ->
                part.roughBody(Heading.MINUS_Z)
                        ? Optional.of("Its underside is rough: straight on the table it rocks, and wants three points")
                        : Optional.empty();
            case PACKING ->
                part.owned(SetUpBlocks.class).isEmpty()
                                && part.owned(Parallels.class).isEmpty()
                        ? Optional.of("No blocks or parallels are owned to pack it up with")
                        : Optional.empty();
            case T_SLOT -> notInSlot(part);
            case JACKS -> notOnJacks(part);
        };
    }

    private static Optional<String> notInSlot(ToHold part) {
        if (!part.barAlong()) {
            return Optional.of("It is not a round bar along the table");
        }
        MachineTable table = part.rows().machine().table();
        return TableSlots.suits(part.diameter(), table)
                ? Optional.empty()
                : Optional.of(
                        "A bar of " + part.length(part.diameter()) + " does not lie well on the edges of a slot of "
                                + part.length(table.slotWidth().inside()));
    }

    private static Optional<String> notOnJacks(ToHold part) {
        if (!part.roughBody(Heading.MINUS_Z)) {
            return Optional.of("It has a flat side to lie on; jacks are for a rough body");
        }
        return part.owned(Jack.class).isEmpty() ? Optional.of("No jacks are owned") : Optional.empty();
    }

    private static TableHolding ink(ToHold part, Seat seat) {
        TableHolding from = part.written().kind() == Holding.Kind.TABLE && now(part, seat)
                ? (TableHolding) part.written()
                : TableHolding.pencilled();
        return TableField.SEAT.write(from, Plannable.inked(seat));
    }

    private static boolean now(ToHold part, Seat seat) {
        return part.setUp().holding() instanceof DrawnTable drawn
                && drawn.seat().value() == seat;
    }
}
