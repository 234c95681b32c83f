package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.Lying;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.TableCover;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** Work that reaches beyond an end of the table: it tips, sags, and swings into whatever stands beside the machine. */
public final class HangsOff implements Check {
    /** N for a kilogram. */
    private static final double GRAVITY = 9.80665;

    @Override
    public String slug() {
        return "hangs-off-the-table";
    }

    /** Of its depth that may reach over the front or back of the table unsaid (common practice). */
    private static final double OVER_EDGE = 0.25;

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            plan.part().setUp(setUp.id()).ifPresent(stage -> {
                found.add(look(plan, setUp, stage.heights()));
                if (setUp.holding().kind() == DrawnHolding.Kind.TABLE) {
                    found.add(overEdge(plan, setUp, stage));
                }
            });
        }
        return found;
    }

    /** Over the front or back: only said where it is as much as tips or springs. */
    private Finding overEdge(Plan plan, DrawnSetUp setUp, SetUpStage stage) {
        TableCover cover = TableCover.of(stage, plan.rows());
        double over = Math.max(cover.front(), cover.back());
        double depth = stage.heights().depth();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.ofSetUp(setUp.id(), "edge", "work"),
                "Work beyond the front or back of the table",
                Figure.atMost(OVER_EDGE * depth, over, Unit.MM));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        Words words = new Words(plan);
        return Finding.fails(
                margin,
                over >= depth / 2 ? Severity.STOP : Severity.CAUTION,
                "The work reaches " + words.length(over) + " beyond the "
                        + (cover.front() >= cover.back() ? "front" : "back") + " of the table " + Words.at(setUp.id())
                        + ", of " + words.length(depth)
                        + "; a quarter is the most. It springs there and tips as soon as"
                        + " a strap is off: bring it to the middle, or put a stout board under its whole length.");
    }

    private Finding look(Plan plan, DrawnSetUp setUp, Heights heights) {
        double end = plan.rows().machine().table().length().inside() / 2;
        double reach = Math.max(heights.right(), -heights.left());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(setUp.id(), "", "work", "work"),
                "Middle of the table to the end of the work",
                Figure.atMost(end, reach, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(plan, setUp, reach - end));
    }

    private static String message(Plan plan, DrawnSetUp setUp, double beyond) {
        Words words = new Words(plan);
        double mass = mass(plan, setUp, beyond);
        double tipping = mass * GRAVITY * beyond / 2;
        return "The work reaches " + words.length(beyond) + " beyond the end of the table " + Words.at(setUp.id())
                + ": " + words.printing().of(Measure.MASS, mass, 1) + " of it hang there and tip with "
                + words.printing().of(Measure.TORQUE, tipping, 1)
                + ". It lifts out of its grip and meets what stands beside the machine:"
                + " take a stand under its end, and wind the table once from end to end.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return new PackingChanges(plan, caution.setUp()).toTheMiddle();
    }

    /** Of what hangs over, kg. */
    private static double mass(Plan plan, DrawnSetUp setUp, double beyond) {
        Lying lying = Lying.of(plan.job().plan().blank().envelope(), setUp.up().value(), setUp.quarterTurns());
        return beyond
                * lying.across().nominal().inside()
                * lying.upright().nominal().inside()
                * plan.rows().material().density().inside();
    }
}
