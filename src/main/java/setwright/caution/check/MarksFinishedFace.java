package setwright.caution.check;

import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.InWords;
import setwright.job.Strapping;
import setwright.job.ViseHolding;
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
        Stream<Finding> jaws = Clamped.all(plan).stream()
                .filter(in -> in.drawn().between().value() != ViseHolding.Between.PAPER)
                .flatMap(in -> Stream.of(in.atSolidJaw(), in.atMovingJaw()).map(side -> look(in, side)));
        return Stream.concat(jaws, Strapped.all(plan).stream().map(this::under)).toList();
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

    /** A bare strap on a face that is fine already. */
    private Finding under(Strapped in) {
        FaceStates states = FaceStates.before(in.plan(), in.setUp());
        Side up = in.setUp().up().value();
        boolean fine = states.of(up) == FaceState.GROUND
                || states.cut(up).filter(MarksFinishedFace::fine).isPresent();
        return in.straps().stream()
                .filter(strap -> fine && strap.drawn().pad().value() == Strapping.Pad.BARE)
                .filter(strap -> strap.by() != Strapping.By.EDGE_CLAMP)
                .findFirst()
                .map(strap -> Finding.fails(
                        in.place(strap),
                        slug(),
                        Severity.NOTE,
                        "The " + strap.name() + " bears bare on the finished " + InWords.word(up) + " face " + in.at()
                                + " and marks it: put brass or paper under its pad."))
                .orElse(Finding.HOLDS);
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> jaws =
                new JawChanges(plan, caution.setUp()).between(ViseHolding.Between.PAPER, "Put paper at both jaws.");
        List<Proposal> straps = StrapChanges.of(plan, caution.setUp(), caution.subject())
                .map(StrapChanges::brass)
                .orElse(List.of());
        return Stream.concat(jaws.stream(), straps.stream()).toList();
    }

    private static boolean fine(Face face) {
        Typed<Length> finish = face.finish();
        return finish != null && finish.inside() < FINE;
    }
}
