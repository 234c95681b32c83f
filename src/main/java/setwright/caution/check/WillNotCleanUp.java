package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.DrawnSetUp;
import setwright.job.Face;
import setwright.job.InWords;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/** The smallest blank does not leave enough to clean a face up, once skew and bow are taken off. */
public final class WillNotCleanUp implements Check {
    private static final double SAME = 1e-6;

    @Override
    public String slug() {
        return "will-not-clean-up";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            FaceStates.faces(plan, setUp.up().value())
                    .filter(face -> FaceStates.cuts(setUp, face))
                    .forEach(face -> found.add(look(plan, setUp, face)));
        }
        return found;
    }

    private Finding look(Plan plan, DrawnSetUp setUp, Face face) {
        double needed = Skin.depth(FaceStates.before(plan, setUp).of(face.side()));
        Margin margin = Margin.of(
                slug(),
                Caution.Place.ofSetUp(setUp.id(), face.id(), Words.called(face)),
                "Allowance of the smallest blank on the " + word(face) + " face",
                Figure.atLeast(needed, allowance(plan, setUp, face), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(plan, setUp, face, margin.figure()));
    }

    /** What stands over the face on the smallest blank; where the opposite face asks the same size, they share it. */
    private static double allowance(Plan plan, DrawnSetUp setUp, Face face) {
        double finished = face.across().nominal().inside();
        double blank = size(plan.job().plan().blank().envelope(), face.side()).leastMm();
        Optional<Face> opposite = FaceStates.faces(plan, face.side().opposite()).findFirst();
        boolean shared = opposite.filter(
                        other -> Math.abs(other.across().nominal().inside() - finished) < SAME)
                .isPresent();
        if (shared) {
            return (blank - finished) / 2;
        }
        return FaceStates.before(plan, setUp)
                        .cut(face.side().opposite())
                        .map(cut -> cut.across().nominal().inside())
                        .orElse(blank)
                - finished;
    }

    private static Size size(Block block, Side side) {
        return switch (side) {
            case TOP, BOTTOM -> block.height();
            case FRONT, BACK -> block.depth();
            case LEFT, RIGHT -> block.length();
        };
    }

    private static String word(Face face) {
        return InWords.word(face.side());
    }

    private static String message(Plan plan, DrawnSetUp setUp, Face face, Figure figure) {
        Words words = new Words(plan);
        return "The smallest blank leaves " + words.length(figure.value()) + " to take off the " + word(face) + " face "
                + Words.at(setUp.id(), "") + "; " + words.length(figure.limit())
                + " is asked for skew and bow of a face that comes so. Some of it stays black: take larger blanks, or"
                + " sort out the small ones.";
    }
}
