package setwright.caution.check;

import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.InWords;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Vise;

/** A jaw that leaves its mark on a face that is finished. */
public final class MarksFinishedFace implements Check {
    /** A smooth steel jaw marks what is finer than this mean roughness, mm (common practice: Ra 0.8). */
    private static final double FINE = 0.0008;

    private static final List<FaceState> CLEAN =
            List.of(FaceState.BRIGHT_DRAWN, FaceState.GROUND, FaceState.EXTRUDED, FaceState.MACHINED);

    @Override
    public String slug() {
        return "marks-finished-face";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .flatMap(in -> Stream.of(in.atSolidJaw(), in.atMovingJaw()).map(side -> look(in, side)))
                .toList();
    }

    private Finding look(Clamped in, Side side) {
        FaceStates states = FaceStates.before(in.plan(), in.setUp());
        boolean serrated = in.vise().jawFace() == Vise.JawFace.SERRATED && CLEAN.contains(states.of(side));
        boolean fine = states.cut(side).filter(MarksFinishedFace::fine).isPresent();
        if (!serrated && !fine) {
            return Finding.HOLDS;
        }
        String word = InWords.word(side);
        String jaw = InWords.word(in.vise().jawFace());
        return Finding.fails(
                in.place(word, word + " face"),
                slug(),
                Severity.NOTE,
                "The " + jaw + " jaw of the " + in.vise().name() + " bears on the finished " + word + " face " + in.at()
                        + " and marks it: take soft jaws, or card between jaw and face.");
    }

    private static boolean fine(Face face) {
        Typed<Length> finish = face.finish();
        return finish != null && finish.inside() < FINE;
    }
}
