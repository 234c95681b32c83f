package setwright.plan.cut;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.SetUp;
import setwright.plan.part.Holes;
import setwright.plan.part.Mouths;

/** What the point of a tool meets first. */
public enum HoleEntry {
    /** A clean face square to it, or a spot or hole that leads it. */
    SQUARE("square"),
    ROUGH("rough"),
    /** A flank of a round bar, or a part that is tilted. */
    SLANTED("slanted");

    private static final List<FaceState> ROUGH_FACES =
            List.of(FaceState.SAWN, FaceState.HOT_ROLLED, FaceState.FLAME_CUT, FaceState.CAST);

    private final String words;

    HoleEntry(String words) {
        this.words = words;
    }

    /** As printed. */
    public String words() {
        return words;
    }

    static HoleEntry of(CutQuestion question) {
        if (question.place().marked()) {
            return SQUARE;
        }
        return Holes.of(question.operation(), question.rows().job())
                .findFirst()
                .map(hole -> of(question, hole))
                .orElse(SQUARE);
    }

    private static HoleEntry of(CutQuestion question, Hole hole) {
        Side side = Mouths.side(hole);
        if (tilted(question) || onFlank(question, side)) {
            return SLANTED;
        }
        boolean faced = question.rows().job().plan().features().stream()
                .anyMatch(feature -> feature.kind() == Feature.Kind.FACE && feature.side() == side);
        FaceState state = question.rows().job().plan().blank().faces().getOrDefault(side, FaceState.SAWN);
        return !faced && ROUGH_FACES.contains(state) ? ROUGH : SQUARE;
    }

    private static boolean tilted(CutQuestion question) {
        return question.rows().job().plan().setUps().stream()
                .filter(setUp -> setUp.id().equals(question.setUp()))
                .map(SetUp::tilt)
                .anyMatch(tilt -> tilt != null);
    }

    private static boolean onFlank(CutQuestion question, Side side) {
        Blank.Kind blank = question.rows().job().plan().blank().kind();
        boolean round = blank == Blank.Kind.ROUND_BAR || blank == Blank.Kind.TUBE;
        return round && side != Side.TOP && side != Side.BOTTOM;
    }
}
