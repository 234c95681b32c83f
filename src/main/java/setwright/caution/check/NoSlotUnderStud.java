package setwright.caution.check;

import java.util.List;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnHolding;
import setwright.job.Strapping;
import setwright.plan.part.StrapPlace;
import setwright.plan.part.TableSlots;
import setwright.quantity.Unit;
import setwright.shop.MachineTable;

/** A stud, or the heel of a strap, stands where the table has nothing for it: beside its slot, or off its end. */
public final class NoSlotUnderStud implements StrapCheck {
    /** A stud may be that far out of the middle of its slot besides the room that it has there, mm. */
    private static final double BESIDE = 1;

    @Override
    public String slug() {
        return "no-slot-under-stud";
    }

    @Override
    public List<Strapping.By> of() {
        return List.of(Strapping.By.values());
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        if (in.setUp().holding().kind() != DrawnHolding.Kind.TABLE) {
            return Finding.HOLDS;
        }
        MachineTable table = in.plan().rows().machine().table();
        if (!Double.isFinite(strap.studAt().x()) || !on(table, strap.studAt()) || !on(table, strap.heelAt())) {
            return Finding.fails(in.place(strap), slug(), Severity.STOP, offTable(in, strap));
        }
        double y = strap.studAt().y();
        double free = Math.max(0, (table.slotWidth().inside() - strap.stud()) / 2) + BESIDE;
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Stud of the " + strap.name() + " beside the middle of its slot",
                Figure.atMost(free, Math.abs(TableSlots.nearest(y, table) - y), Unit.MM));
        return margin.figure().holds() && table.slots() > 0
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.STOP, beside(in, strap, margin.figure()));
    }

    private static boolean on(MachineTable table, Point2 place) {
        return Math.abs(place.x()) <= table.length().inside() / 2
                && Math.abs(place.y()) <= table.width().inside() / 2;
    }

    private static String offTable(Strapped in, StrapPlace strap) {
        return "The stud or heel of the " + strap.name() + " " + in.at() + " stands beside the table. There is nothing"
                + " that it could pull on or stand on: bring the strap over the table, or turn its heel inward.";
    }

    private static String beside(Strapped in, StrapPlace strap, Figure figure) {
        Words words = new Words(in.plan());
        return "The stud of the " + strap.name() + " " + in.at() + " stands " + words.length(figure.value())
                + " from the middle of the nearest T-slot; " + words.length(figure.limit())
                + " is the most. No T-nut is under it: bring the strap over a slot, or turn it so that its stud comes"
                + " over one.";
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.overSlots();
    }
}
