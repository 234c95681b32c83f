package setwright.caution.check;

import java.util.List;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.ScrewForms;
import setwright.job.Strapping;
import setwright.plan.part.StrapGear;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Unit;
import setwright.shop.TNut;

/**
 * A stud pulls on the lips of the T-slot with more than they bear. Both lips are sheared over the length of the nut, each
 * as thick as the slot is wide (the sizes of ISO 299: depth less height of the head).
 */
public final class SlotOverloaded implements StrapCheck {
    /** Shear in the lips of a grey iron table, N/mm²: a fifth of what it breaks at (common practice). */
    private static final double SHEAR = 45;

    /** Nut factor (T = K d F, SAE J429: 0.20). */
    private static final double NUT_FACTOR = 0.2;

    /** A firm pull of 250 N on a spanner 14 diameters long, N·mm a mm of thread (common practice). */
    private static final double BY_HAND = 250 * 14;

    /** So many times the torque of a hand never goes on a table. */
    private static final double NEVER = 3;

    @Override
    public String slug() {
        return "slot-overloaded";
    }

    @Override
    public List<Strapping.By> of() {
        return List.of(Strapping.By.values());
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        return StrapGear.of(strap, in.plan().rows())
                .flatMap(StrapGear::nut)
                .map(nut -> look(in, strap, nut))
                .orElse(Finding.HOLDS);
    }

    private Finding look(Strapped in, StrapPlace strap, TNut nut) {
        double torque = strap.drawn().torque().value().inside();
        double pull = ScrewForms.preload(torque, NUT_FACTOR, strap.stud());
        double borne = SHEAR
                * 2
                * in.plan().rows().machine().table().slotWidth().inside()
                * nut.width().inside();
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Pull of the stud of the " + strap.name() + " on the lips of the slot",
                Figure.atMost(borne, pull, Unit.KN));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        Words words = new Words(in.plan());
        return Finding.fails(
                margin,
                torque >= NEVER * BY_HAND * strap.stud() ? Severity.STOP : Severity.CAUTION,
                "The nut of the " + strap.name() + " at "
                        + strap.drawn().torque().value().text() + " " + in.at()
                        + " pulls its stud with " + words.force(pull) + "; the lips of the slot bear "
                        + words.force(borne)
                        + ". They break out, and the table with them: take more straps, each done up by hand.");
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.torque(BY_HAND * changes.strap().stud());
    }
}
