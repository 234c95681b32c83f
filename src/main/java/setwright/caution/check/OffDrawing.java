package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Feature;
import setwright.job.OperationField;
import setwright.plan.Plan;
import setwright.plan.outcome.ComesOut;
import setwright.plan.outcome.Odd;
import setwright.quantity.Unit;
import setwright.shop.Cutter;

/** A feature that the cutter and the depth of its operation leave standing, or cut too far. */
public final class OffDrawing implements Check {
    /** What is less is nobody's business, mm. */
    private static final double NOTHING = 0.02;

    /** Of the corner of a square that a round leaves standing: so much of the difference of the radii. */
    private static final double IN_CORNER = Math.sqrt(2) - 1;

    private final String slug;
    private final Odd.What what;

    private OffDrawing(String slug, Odd.What what) {
        this.slug = slug;
        this.what = what;
    }

    public static OffDrawing left() {
        return new OffDrawing("left-standing", Odd.What.LEFT_STANDING);
    }

    public static OffDrawing tooMuch() {
        return new OffDrawing("cut-too-much", Odd.What.CUT_TOO_MUCH);
    }

    @Override
    public String slug() {
        return slug;
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Odd> all = ComesOut.of(plan.drawnUp(), plan.rows(), plan.part());
        return Operations.each(
                plan,
                in -> plan.part().operation(in.operation().id()).isEmpty()
                        ? in.unlooked(slug, Operations.FOR_ROOM)
                        : worst(all, in).map(odd -> fails(in, odd)).orElse(Finding.HOLDS));
    }

    private Optional<Odd> worst(List<Odd> all, Operations.In in) {
        return all.stream()
                .filter(odd -> odd.what() == what
                        && odd.mm() > NOTHING
                        && odd.operation().equals(in.operation().id()))
                .max(Comparator.comparingDouble(Odd::mm));
    }

    private Finding fails(Operations.In in, Odd odd) {
        String called = in.plan().job().plan().features().stream()
                .filter(feature -> feature.id().equals(odd.feature()))
                .findFirst()
                .map((Feature feature) -> Words.sentence(Words.called(feature)))
                .orElse(odd.feature());
        Margin margin = Margin.of(
                slug,
                in.place(odd.feature()),
                "What " + in.cutter() + " makes of " + called,
                Figure.atMost(NOTHING, odd.mm(), Unit.MM));
        boolean left = what == Odd.What.LEFT_STANDING;
        return Finding.fails(
                margin,
                left ? Severity.CAUTION : Severity.STOP,
                left ? leftStanding(in, odd, called) : cut(in, odd, called));
    }

    private static String leftStanding(Operations.In in, Odd odd, String called) {
        return called + " is not finished " + in.at() + ": " + in.cutter() + " leaves "
                + new Words(in.plan()).length(odd.mm()) + " standing " + odd.where()
                + ". Nothing later takes it away: take a cutter that gets in, or set the depth that is asked.";
    }

    private static String cut(Operations.In in, Odd odd, String called) {
        return called + " comes " + new Words(in.plan()).length(odd.mm()) + " " + wrong(odd) + " " + in.at() + " with "
                + in.cutter() + ". The part is scrap: take a cutter that leaves what is drawn, or set the depth that is"
                + " asked.";
    }

    private static String wrong(Odd odd) {
        return odd.where().startsWith("too") || odd.where().startsWith("out") ? odd.where() : "too deep " + odd.where();
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        DrawnOperation operation = tool.operation();
        List<Proposal> all = new ArrayList<>();
        if (!operation.depth().pencilled()) {
            all.add(new Proposal(
                    Proposal.Way.DEPTH,
                    "Give the depth back to the pencil " + Words.now(operation.depth()) + ".",
                    Edits.pencil(plan.drawnUp(), operation.id(), OperationField.DEPTH)));
        }
        all.addAll(tool.cutterToPencil());
        Figure figure = caution.figure();
        if (figure != null && !operation.kind().inHole()) {
            plan.rows().cutter(operation.cutter().value()).map(Cutter::diameter).ifPresent(now -> {
                double over = what == Odd.What.CUT_TOO_MUCH ? figure.value() : 2 * figure.value() / IN_CORNER;
                double most = now.inside() - over + NOTHING;
                all.addAll(tool.endMills(most / 2, most, most));
            });
        }
        return all;
    }
}
