package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.caution.Severity;
import setwright.job.Block;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.Edits;
import setwright.job.InWords;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.job.ViseHolding.JawSeat;
import setwright.plan.NotChecked;
import setwright.plan.Plan;
import setwright.plan.part.JawPlates;
import setwright.plan.part.Lying;
import setwright.plan.part.ViseBodies;
import setwright.quantity.Unit;
import setwright.shop.Vise;

/** The part does not go between the jaws of the vise as they are screwed on. */
public final class OpeningTooSmall implements Check {
    @Override
    public String slug() {
        return "opening-too-small";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            if (setUp.holding() instanceof DrawnVise drawn) {
                Optional<Vise> vise = plan.rows().vise(drawn.vise().value());
                found.add(vise.map(row -> look(plan, setUp, drawn, row))
                        .orElseGet(() -> new Finding.Unlooked(
                                new NotChecked(slug(), setUp.id(), "", "a vise of the shop that takes the part"))));
            }
        }
        return found;
    }

    private Finding look(Plan plan, DrawnSetUp setUp, DrawnVise drawn, Vise vise) {
        JawSeat seat = drawn.seat().value();
        double across = across(plan, setUp) + besides(plan, drawn, vise);
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(setUp.id(), "", "opening", "opening of the vise"),
                "Part in the " + vise.name(),
                Figure.atMost(opening(vise, seat), across, Unit.MM));
        Words words = new Words(plan);
        String message = "The blank" + with(plan, drawn, vise) + " is " + words.length(across)
                + " across at its largest and the " + vise.name()
                + " opens " + words.length(opening(vise, seat)) + " with its jaws " + word(seat) + " "
                + Words.at(setUp.id())
                + ". It does not go in: take the outer seats or a larger vise, or turn the part.";
        return margin.figure().holds() ? Finding.holds(margin) : Finding.fails(margin, Severity.STOP, message);
    }

    /** What a bar or strip takes, and thicker jaws than the vise's own. */
    private static double besides(Plan plan, DrawnVise drawn, Vise vise) {
        JawPlates jaws = JawPlates.of(drawn, vise, plan.rows());
        return ViseBodies.gap(drawn)
                + 2 * Math.max(0, jaws.thickness() - vise.jawThickness().inside() - jaws.cut());
    }

    private static String with(Plan plan, DrawnVise drawn, Vise vise) {
        return besides(plan, drawn, vise) > 0 ? " with what is put into the jaws" : "";
    }

    /** Of the largest blank. */
    private static double across(Plan plan, DrawnSetUp setUp) {
        Block block = plan.job().plan().blank().envelope();
        return Lying.of(block, setUp.up().value(), setUp.quarterTurns())
                .across()
                .greatestMm();
    }

    private static double opening(Vise vise, JawSeat seat) {
        return switch (seat) {
            case INBOARD -> vise.openingInboard().inside();
            case OUTBOARD -> vise.openingOutboard().inside();
        };
    }

    private static String word(JawSeat seat) {
        return InWords.word(seat);
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnSetUp setUp = Operations.setUp(plan, caution.setUp());
        if (!(setUp.holding() instanceof DrawnVise drawn)) {
            return List.of();
        }
        List<Proposal> all = new ArrayList<>();
        if (drawn.seat().value() == JawSeat.INBOARD) {
            all.add(new Proposal(
                    Way.SEAT,
                    "Set the jaws on their outer seats " + Words.now(drawn.seat(), OpeningTooSmall::word) + ".",
                    Edits.set(plan.drawnUp(), setUp.id(), ViseField.SEAT, Plannable.inked(JawSeat.OUTBOARD))));
        }
        plan.rows().all(Vise.class).stream()
                .filter(vise -> vise.kept().owned() != 0
                        && !vise.id().equals(drawn.vise().value()))
                .filter(vise -> opening(vise, drawn.seat().value()) >= across(plan, setUp))
                .map(vise -> new Proposal(
                        Way.DEVICE,
                        "Take the " + vise.name() + ".",
                        Edits.set(plan.drawnUp(), setUp.id(), ViseField.VISE, Plannable.inked(vise.id()))))
                .forEach(all::add);
        return all;
    }
}
