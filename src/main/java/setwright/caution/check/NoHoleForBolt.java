package setwright.caution.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Strapping;
import setwright.plan.part.Heights;
import setwright.plan.part.Lying;
import setwright.plan.part.StrapPlace;

/** A bolt is to go through the part where it has no hole, one too small, or one that is not drilled yet. */
public final class NoHoleForBolt implements StrapCheck {
    /** A bolt this far from the middle of a hole goes through another one, mm. */
    private static final double SAME = 0.5;

    @Override
    public String slug() {
        return "no-hole-for-bolt";
    }

    @Override
    public List<Strapping.By> of() {
        return List.of(Strapping.By.BOLT);
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        Words words = new Words(in.plan());
        String bolt = "The " + strap.name() + " " + in.at();
        Optional<Hole> under = through(in, strap);
        if (under.isEmpty()) {
            return stop(
                    in, strap, bolt + " has no through hole of the part under it: bring it over one, or take a strap.");
        }
        Hole hole = under.get();
        double size = hole.size().leastMm();
        if (size < strap.stud()) {
            return stop(
                    in,
                    strap,
                    bolt + " is " + words.length(strap.stud()) + " thick and its hole " + words.length(size)
                            + ": take thinner studs, or a strap.");
        }
        return drilled(in, hole)
                ? Finding.HOLDS
                : stop(
                        in,
                        strap,
                        bolt + " goes through hole " + hole.id() + ", which is not drilled before this set-up: drill it"
                                + " in a clamping before, or take a strap here.");
    }

    private Finding stop(Strapped in, StrapPlace strap, String message) {
        return Finding.fails(in.place(strap), slug(), Severity.STOP, message);
    }

    private static Optional<Hole> through(Strapped in, StrapPlace strap) {
        Heights at = in.heights();
        Lying lying = Lying.of(
                in.plan().job().plan().blank().envelope(),
                in.setUp().up().value(),
                in.setUp().quarterTurns());
        double x = strap.pad().x() - (at.left() + at.right()) / 2;
        double y = strap.pad().y() - (at.front() + at.back()) / 2;
        return in.plan().job().plan().features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(Hole::through)
                .filter(hole -> hole.side() == in.setUp().up().value()
                        || hole.side() == in.setUp().up().value().opposite())
                .filter(hole -> lying.places(hole, in.setUp().up().value()).stream()
                        .anyMatch(place -> StrictMath.hypot(place.x() - x, place.y() - y) <= SAME))
                .max(Comparator.comparingDouble(hole -> hole.size().leastMm()));
    }

    /** As received, or made in a set-up before. */
    private static boolean drilled(Strapped in, Feature hole) {
        if (in.plan().job().plan().received().contains(hole.id())) {
            return true;
        }
        return in.plan().drawnUp().setUps().stream()
                .takeWhile(setUp -> !setUp.id().equals(in.setUp().id()))
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(one ->
                        one.kind() == Operation.Kind.DRILL && one.features().contains(hole.id()));
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.asStrap();
    }
}
