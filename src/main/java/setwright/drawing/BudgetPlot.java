package setwright.drawing;

import java.util.Comparator;
import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** An error budget as bars, the largest contributor first, both sums below them, the limit as an upright line. */
final class BudgetPlot {
    private static final double BAR = 5;
    private static final double PITCH = 9;
    private static final double NAMES = 75;
    private static final double FIGURES = 20;
    /** The limit stands here of the width, unless a bar goes further. */
    private static final double ROOM = 0.75;

    private final FeatureBudget budget;
    private final Printing printing;
    private final double scale;
    private final Pen pen = new Pen();
    private double y;

    private BudgetPlot(FeatureBudget budget, Printing printing) {
        this.budget = budget;
        this.printing = printing;
        double longest = Math.max(budget.limit() / ROOM, budget.worstCase().inside());
        scale = Axes.WIDTH / Math.max(1e-9, longest);
    }

    static Drawing of(FeatureBudget budget, Printing printing) {
        return new BudgetPlot(budget, printing).drawing();
    }

    private Drawing drawing() {
        List<FeatureBudget.Contribution> parts = budget.contributions().stream()
                .sorted(Comparator.comparingDouble(FeatureBudget.Contribution::halfWidth)
                        .reversed())
                .toList();
        parts.forEach(part ->
                bar(Fill.OTHER_FIXTURE, part.name() + (part.known() ? " (always adds)" : ""), part.halfWidth()));
        y -= PITCH / 2;
        bar(Fill.PART, "root sum square", budget.rss().inside());
        bar(Fill.PART, "worst case", budget.worstCase().inside());
        double limit = scale * budget.limit();
        pen.line(LineRole.VISIBLE, new Point2(limit, PITCH), new Point2(limit, y));
        pen.add(new Mark.Text(
                new Point2(limit, PITCH),
                Mark.Anchor.ABOVE,
                Mark.Lettering.SMALL,
                "allowed " + printing.of(Measure.SMALL_LENGTH, budget.limit())));
        return pen.drawing(new PlanBox(-NAMES, y, Axes.WIDTH + FIGURES, PITCH + BAR));
    }

    private void bar(Fill fill, String name, double size) {
        Span up = new Span(y - BAR / 2, y + BAR / 2);
        double end = Math.min(Axes.WIDTH, scale * size);
        pen.fill(fill, Pen.rectangle(new Span(0, end), up));
        pen.closed(LineRole.THIN, Pen.rectangle(new Span(0, end), up));
        pen.add(new Mark.Text(new Point2(-1, y), Mark.Anchor.RIGHT, Mark.Lettering.SMALL, name));
        pen.add(new Mark.Text(
                new Point2(end + 1, y),
                Mark.Anchor.LEFT,
                Mark.Lettering.SMALL,
                printing.of(Measure.SMALL_LENGTH, size)));
        y -= PITCH;
    }
}
