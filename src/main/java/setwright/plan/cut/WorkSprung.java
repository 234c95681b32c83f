package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingLoad;
import setwright.cutting.TurnPoint;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.Single;
import setwright.geometry.plane.PlanBox;
import setwright.job.Blank;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.cut.WorkGives.Where;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.rigidity.Plate;
import setwright.rigidity.PlateTable;
import setwright.rigidity.Shaft;

/** Finds what of the work bends under a milling cut, and how far. */
final class WorkSprung {
    /** Of a worn edge over a sharp one (from memory). */
    private static final double WORN = 1.3;

    private static final double TOUCHES = 0.1;

    private final CutQuestion question;
    private final SetUpStage stage;
    private final DrawnSetUp setUp;
    private final MillingCut cut;

    private WorkSprung(CutQuestion question, SetUpStage stage, DrawnSetUp setUp, MillingCut cut) {
        this.question = question;
        this.stage = stage;
        this.setUp = setUp;
        this.cut = cut;
    }

    static List<WorkGives> of(CutQuestion question, OperationCut done, SetUpStage stage, DrawnSetUp setUp) {
        MillingLoad load = done.milling();
        return load == null
                ? List.of()
                : new WorkSprung(
                                question,
                                stage,
                                setUp,
                                LastPass.of(question, load.cut()).cut())
                        .all();
    }

    private List<WorkGives> all() {
        List<WorkGives> found = new ArrayList<>();
        switch (question.operation().kind()) {
            case FACE -> {
                overhang(found);
                between(found);
            }
            case POCKET, SLOT, STEP -> {
                walls(found);
                floor(found);
            }
            case KEYSEAT -> between(found);
            default -> {}
        }
        return found;
    }

    private void overhang(List<WorkGives> found) {
        if (setUp.holding().kind() != DrawnHolding.Kind.VISE) {
            return;
        }
        Heights at = stage.heights();
        question.rows().vise(((DrawnVise) setUp.holding()).vise().value()).ifPresent(vise -> {
            double half = vise.jawWidth().inside() / 2;
            double out = Math.max(at.right() - half, -at.left() - half);
            if (out > 0) {
                found.add(plate(Where.OVERHANG, PlateTable.OVERHANG, upOrDown(), out, at.depth(), thickness()));
            }
        });
    }

    /** Two supports with air between them; more than two, or one that reaches through, and nothing is said. */
    private void between(List<WorkGives> found) {
        List<PlanBox> supports = supports();
        if (supports.size() != 2) {
            return;
        }
        PlanBox one = supports.get(0);
        PlanBox other = supports.get(1);
        double alongX = Math.max(one.xLow(), other.xLow()) - Math.min(one.xHigh(), other.xHigh());
        double alongY = Math.max(one.yLow(), other.yLow()) - Math.min(one.yHigh(), other.yHigh());
        double span = Math.max(alongX, alongY);
        if (span <= TOUCHES) {
            return;
        }
        double across =
                alongX > alongY ? stage.heights().depth() : stage.heights().length();
        found.add(
                round()
                        ? shaft(span)
                        : plate(
                                Where.BETWEEN_SUPPORTS,
                                PlateTable.PARALLELS_EDGE,
                                upOrDown(),
                                span,
                                across,
                                thickness()));
    }

    private boolean round() {
        return question.rows().job().plan().blank().kind() == Blank.Kind.ROUND_BAR;
    }

    private List<PlanBox> supports() {
        return stage.fixtures().stream()
                .filter(body -> body.role() == Role.PARALLEL || body.role() == Role.PACKING)
                .filter(body -> Math.abs(box(body).zHigh() - stage.heights().partBottom()) < TOUCHES)
                .map(body -> box(body).plan())
                .toList();
    }

    private static Box box(Body body) {
        return body.solid().box();
    }

    private double thickness() {
        return stage.heights().finishedTop() - stage.heights().partBottom();
    }

    private void walls(List<WorkGives> found) {
        for (Single gone : newlyGone()) {
            WallBeside.thinnest(
                            question.stage().after(),
                            gone.box(),
                            stage,
                            setUp.holding().kind())
                    .ifPresent(wall -> found.add(plate(
                            Where.WALL,
                            PlateTable.OVERHANG,
                            sideways(),
                            wall.height(),
                            wall.length(),
                            wall.thickness())));
        }
    }

    private void floor(List<WorkGives> found) {
        double bottom = stage.heights().partBottom();
        for (Single gone : newlyGone()) {
            Box box = gone.box();
            double thick = box.zLow() - bottom;
            boolean free = bottom - stage.heights().bed() > TOUCHES
                    && supports().stream().noneMatch(one -> one.gap(box.plan()) < TOUCHES);
            if (thick > TOUCHES && free) {
                double shorter = Math.min(box.plan().length(), box.plan().depth());
                double longer = Math.max(box.plan().length(), box.plan().depth());
                found.add(heldAllRound(upOrDown(), shorter, longer, thick));
            }
        }
    }

    private List<Single> newlyGone() {
        OperationStage on = question.stage();
        return on.after()
                .cuts()
                .subList(
                        Math.min(on.before().cuts().size(), on.after().cuts().size()),
                        on.after().cuts().size());
    }

    private Given upOrDown() {
        return force(
                "largest force along the spindle", load -> Math.abs(load.force().axial()));
    }

    private Given sideways() {
        return force(
                "largest force across the feed", load -> Math.abs(load.force().cross()));
    }

    private Given force(String name, java.util.function.ToDoubleFunction<TurnPoint> part) {
        double most = question.force(cut).load().turn().stream()
                .mapToDouble(part)
                .max()
                .orElse(0);
        return Given.of(
                name,
                most,
                Unit.N,
                question.setUp() + "/" + question.operation().id() + "/load");
    }

    private Given modulus() {
        return question.shop(
                "modulus of elasticity",
                question.rows().material().elasticModulus().inside(),
                Unit.N_PER_MM2,
                "elasticModulus");
    }

    private WorkGives plate(Where where, PlateTable table, Given force, double span, double across, double thick) {
        Worked worked = Plate.SPANNING.of(
                table.of(across / span), force, mm("what stands free", span), modulus(), mm("thickness", thick));
        return gives(where, worked, span, thick);
    }

    private WorkGives heldAllRound(Given force, double shorter, double longer, double thick) {
        Worked worked = Plate.HELD_ALL_ROUND.of(
                PlateTable.EDGES_FIXED.of(longer / shorter),
                force,
                mm("shorter side", shorter),
                modulus(),
                mm("thickness", thick));
        return gives(Where.FLOOR, worked, shorter, thick);
    }

    private WorkGives shaft(double span) {
        double diameter = thickness();
        Worked worked =
                Shaft.MIDWAY.of(upOrDown(), mm("between the supports", span), modulus(), mm("diameter", diameter));
        return gives(Where.SHAFT, worked, span, diameter);
    }

    private static Given mm(String name, double mm) {
        return Given.of(name, mm, Unit.MM, "where the part sits");
    }

    private static WorkGives gives(Where where, Worked worked, double span, double thick) {
        double expected = worked.inside();
        return new WorkGives(where, worked, new Band(expected, expected, WORN * expected), span, thick);
    }
}
