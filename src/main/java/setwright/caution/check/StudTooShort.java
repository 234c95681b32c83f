package setwright.caution.check;

import java.util.List;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.part.StrapGear;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Unit;

/** The longest stud of a set is too short for its nut on the strap, or its T-nut too thin for it. */
public final class StudTooShort implements StrapCheck {
    /** Of a diameter: below this in its nut it strips (common practice). */
    private static final double STOP = 0.75;

    @Override
    public String slug() {
        return "stud-too-short";
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        return StrapGear.of(strap, in.plan().rows())
                .map(gear -> look(in, strap, gear))
                .orElse(Finding.HOLDS);
    }

    private Finding look(Strapped in, StrapPlace strap, StrapGear gear) {
        double engaged = Math.min(
                gear.overStrap(in.plan().rows()),
                StrapGear.inNut(gear.studs(), in.plan().rows()));
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Thread of the " + strap.name() + " in its nut",
                Figure.atLeast(strap.stud(), engaged, Unit.MM));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        Words words = new Words(in.plan());
        String far = engaged > 0
                ? "is " + words.length(engaged) + " in its nut"
                : "ends " + words.length(-engaged) + " under the top of the strap";
        return Finding.fails(
                margin,
                engaged < STOP * strap.stud() ? Severity.STOP : Severity.CAUTION,
                "The stud " + gear.length().text() + " of the " + strap.name() + " " + in.at() + " " + far + "; "
                        + words.length(strap.stud())
                        + " is asked, its diameter. The thread strips under the pull: take a longer stud.");
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.otherStuds();
    }
}
