package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.job.FaceState;
import setwright.job.InWords;
import setwright.plan.Plan;

/** A sawn or cast face against the solid jaw though the part has a clean one that could stand there. */
public final class RoughFaceAsDatum implements Check {
    @Override
    public String slug() {
        return "rough-face-as-datum";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream().map(this::look).toList();
    }

    private Finding look(Clamped in) {
        FaceStates states = FaceStates.before(in.plan(), in.setUp());
        Side solid = in.atSolidJaw();
        Side moving = in.atMovingJaw();
        if (!states.rough(solid) || states.rough(moving)) {
            return Finding.HOLDS;
        }
        return Finding.fails(
                in.place("solid-jaw", word(solid) + " face"),
                slug(),
                Severity.CAUTION,
                "The " + word(solid) + " face is " + written(states.of(solid)) + " and bears on the solid jaw "
                        + in.at() + ", while the " + word(moving) + " face is " + written(states.of(moving))
                        + ". The part lies askew by what the rough face is out: bring the clean face to the solid jaw.");
    }

    private static String word(Side side) {
        return InWords.word(side);
    }

    private static String written(FaceState state) {
        return InWords.word(state);
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return List.of(new PlaceChanges(plan, caution.setUp())
                .turned(2, "Set the part half round, its clean face to the solid jaw."));
    }
}
