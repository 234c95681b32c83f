package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Box;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Edits;
import setwright.job.HoldingEdits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.plan.Plan;
import setwright.plan.outcome.Loose;
import setwright.plan.part.Heights;

/** A cut frees a slug, or the part itself, with the cutter in it and nothing that holds it. */
public final class PieceComesLoose implements Check {
    @Override
    public String slug() {
        return "piece-comes-loose";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Loose> all = Loose.of(plan.drawnUp(), plan.rows(), plan.part());
        return Operations.each(
                plan,
                in -> plan.part().operation(in.operation().id()).isEmpty()
                        ? in.unlooked(slug(), Operations.FOR_ROOM)
                        : of(all, in.operation().id())
                                .map(loose -> fails(in, loose))
                                .orElse(Finding.HOLDS));
    }

    private static Optional<Loose> of(List<Loose> all, String operation) {
        return all.stream().filter(loose -> loose.operation().equals(operation)).findFirst();
    }

    private Finding fails(Operations.In in, Loose loose) {
        Words words = new Words(in.plan());
        Box box = loose.piece().box();
        String size = words.length(box.plan().length()) + " x "
                + words.length(box.plan().depth()) + " x " + words.length(box.zHigh() - box.zLow());
        double mass =
                loose.piece().volume() * in.plan().rows().material().density().inside();
        return Finding.fails(
                in.place("piece"),
                slug(),
                Severity.STOP,
                in.cutter() + " cuts " + (loose.waste() ? "a piece" : "the part") + " of " + size + " loose " + in.at()
                        + ", " + words.mass(mass) + ", and nothing holds it. It jams against the cutter and is thrown:"
                        + " take hold of both pieces, or leave a web that is broken out afterwards.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>();
        DrawnSetUp setUp = Operations.setUp(plan, caution.setUp());
        Optional<Loose> loose = of(Loose.of(plan.drawnUp(), plan.rows(), plan.part()), caution.operation());
        loose.ifPresent(piece -> {
            if (setUp.holding().kind() == DrawnHolding.Kind.VISE) {
                all.add(turned(plan, setUp));
            } else {
                plan.part()
                        .setUp(setUp.id())
                        .ifPresent(stage -> all.add(strapped(plan, setUp, piece, stage.heights())));
            }
        });
        all.addAll(new WebLeft(plan).proposals(caution));
        return all;
    }

    /** A quarter round, so that the jaws hold both pieces. */
    private static Proposal turned(Plan plan, DrawnSetUp setUp) {
        Job job = plan.job();
        Job changed = job.withPlan(job.plan()
                .withSetUps(Edits.written(plan.drawnUp()).stream()
                        .map(one -> one.id().equals(setUp.id())
                                ? one.withQuarterTurns((setUp.quarterTurns() + 1) % 4)
                                : one)
                        .toList()));
        return new Proposal(
                Proposal.Way.PART_PLACE,
                "Set the part a quarter turn round, so that the jaws hold both pieces.",
                changed);
    }

    private static String newest(Job job, String setUp) {
        return job.plan().setUps().stream()
                .filter(one -> one.id().equals(setUp))
                .flatMap(one -> HoldingEdits.straps(one.holding()).stream())
                .map(Strapping::id)
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    /** One strap more, on the piece. */
    private static Proposal strapped(Plan plan, DrawnSetUp setUp, Loose loose, Heights heights) {
        Words words = new Words(plan);
        Box box = loose.piece().box();
        double u = (box.plan().xLow() + box.plan().xHigh()) / 2 - heights.left();
        double v = (box.plan().yLow() + box.plan().yHigh()) / 2 - heights.front();
        Job more = HoldingEdits.addStrap(plan.drawnUp(), setUp.id());
        DrawnUp drawn = new DrawnUp(more, plan.drawnUp().setUps());
        String id = newest(more, setUp.id());
        HoldingEdits.StrapAt at = new HoldingEdits.StrapAt(setUp.id(), id);
        Job right = HoldingEdits.set(drawn, at, StrapField.U, Plannable.inked(words.typed(u)));
        Job both = HoldingEdits.set(
                new DrawnUp(right, plan.drawnUp().setUps()), at, StrapField.V, Plannable.inked(words.typed(v)));
        return new Proposal(
                Proposal.Way.GRIP,
                "Hold the piece by one strap more, its pad " + words.length(u) + " from the left and " + words.length(v)
                        + " from the front.",
                both);
    }
}
