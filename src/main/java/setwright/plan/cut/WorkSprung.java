package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingLoad;
import setwright.cutting.TurnPoint;
import setwright.geometry.Box;
import setwright.geometry.Single;
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
    private final OperationStage on;
    private final DrawnSetUp setUp;
    private final MillingCut cut;

    private WorkSprung(CutQuestion question, SetUpStage stage, OperationStage on, DrawnSetUp setUp, MillingCut cut) {
        this.question = question;
        this.stage = stage;
        this.on = on;
        this.setUp = setUp;
        this.cut = cut;
    }

    static List<WorkGives> of(CutQuestion question, OperationCut done, SetUpStage stage, DrawnSetUp setUp) {
        MillingLoad load = done.milling();
        return load == null
                ? List.of()
                : stage.operations().stream()
                        .filter(on -> on.operation().equals(done.operation()))
                        .findFirst()
                        .map(on -> new WorkSprung(
                                question,
                                stage,
                                on,
                                setUp,
                                LastPass.of(question, load.cut()).cut()))
                        .map(WorkSprung::all)
                        .orElse(List.of());
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
        Supports.of(stage, setUp.holding())
                .gap()
                .filter(gap -> newlyGone().stream()
                        .anyMatch(gone -> gap.reaches(gone.box().plan())))
                .map(gap -> round()
                        ? shaft(gap.span())
                        : plate(
                                Where.BETWEEN_SUPPORTS,
                                PlateTable.PARALLELS_EDGE,
                                upOrDown(),
                                gap.span(),
                                gap.across(stage.heights()),
                                thickness()))
                .ifPresent(found::add);
    }

    private boolean round() {
        return question.rows().job().plan().blank().kind() == Blank.Kind.ROUND_BAR;
    }

    private double thickness() {
        return stage.heights().finishedTop() - stage.heights().partBottom();
    }

    private void walls(List<WorkGives> found) {
        for (Single gone : newlyGone()) {
            WallBeside.thinnest(on.after(), gone.box(), stage, setUp.holding().kind())
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
                    && Supports.of(stage, setUp.holding()).noneUnder(box.plan());
            if (thick > TOUCHES && free) {
                double shorter = Math.min(box.plan().length(), box.plan().depth());
                double longer = Math.max(box.plan().length(), box.plan().depth());
                found.add(heldAllRound(upOrDown(), shorter, longer, thick));
            }
        }
    }

    private List<Single> newlyGone() {
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

    private WorkGives gives(Where where, Worked worked, double span, double thick) {
        double expected = worked.inside();
        Double allowed = where == Where.WALL
                ? Tolerated.of(question.features()).map(Tolerated::out).orElse(null)
                : Tolerated.fromAbove(question.features()).orElse(null);
        return new WorkGives(where, worked, new Band(expected, expected, WORN * expected), span, thick, allowed);
    }
}
