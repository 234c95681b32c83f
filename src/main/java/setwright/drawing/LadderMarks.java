package setwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Point3;
import setwright.geometry.Role;
import setwright.geometry.ToolStack;
import setwright.geometry.plane.PlanBox;
import setwright.plan.room.OperationRoom;
import setwright.plan.room.SetUpRoom;
import setwright.reach.Level;

/** The height ladder beside the front view: every named level from table to nose. */
final class LadderMarks {
    /** The ladder stands so far to the left of the view, mm. */
    private static final double ASIDE = 10;

    /** The quill counts as in where it is out less than this, mm. */
    private static final double LEAST_QUILL = 0.5;

    private final Scene scene;
    private final Frame frame;

    private LadderMarks(Scene scene) {
        this.scene = scene;
        frame = Frame.of(scene, View.FRONT);
    }

    static Drawing of(Scene scene) {
        return new LadderMarks(scene).drawn();
    }

    private Drawing drawn() {
        List<Mark.Rung> rungs = new ArrayList<>();
        levels().forEach(level -> rungs.add(still(level)));
        scene.tool().ifPresent(wound -> rungs.addAll(moving(wound)));
        rungs.sort(Comparator.comparingDouble(Mark.Rung::y));
        double x = frame.across().low() - ASIDE;
        Mark.Ladder ladder = new Mark.Ladder(x, "over table, " + scene.unit(), rungs, breaks());
        return new Drawing(
                List.of(ladder), new PlanBox(x, frame.up().low(), x, frame.up().high()));
    }

    /** The levels that are there: none above the highest thing as it stands. */
    private List<Level> levels() {
        double highest = Frame.highest(scene) + 1e-6;
        return scene.plan().room().setUp(scene.setUp().id()).map(SetUpRoom::levels).orElse(List.of()).stream()
                .filter(level -> level.height() <= highest)
                .toList();
    }

    private List<Double> breaks() {
        List<Double> at = new ArrayList<>(frame.table().left().stream()
                .map(span -> frame.table().of((span.low() + span.high()) / 2))
                .toList());
        scene.tool().ifPresent(wound -> {
            double nose = wound.on().tool().heightOf(Role.SPINDLE_NOSE);
            if (Double.isFinite(nose) && quillIn(wound, nose).isPresent()) {
                ToolFrame tool = Frame.tool(scene, View.FRONT, frame.table(), wound);
                at.add((tool.y(wound.point(), nose) + top(wound)) / 2);
            }
        });
        return at;
    }

    private Mark.Rung still(Level level) {
        double y = frame.table().of(level.height());
        double part = View.FRONT.left(scene.before().blank().box());
        double bodies = scene.stage().fixtures().stream()
                .filter(body -> Math.abs(body.solid().box().zHigh() - level.height()) < 1e-6)
                .mapToDouble(body -> Math.max(
                        View.FRONT.left(body.solid().box()), frame.across().low()))
                .min()
                .orElse(part);
        return new Mark.Rung(level.name(), figure(level.height()), y, bodies, false);
    }

    private List<Mark.Rung> moving(Scene.Wound wound) {
        ToolFrame tool = Frame.tool(scene, View.FRONT, frame.table(), wound);
        ToolStack stack = wound.on().tool();
        List<Mark.Rung> rungs = new ArrayList<>();
        rungs.add(rung(wound, tool, new Part("tool point", 0, 0)));
        double face = stack.heightOf(Role.HOLDER);
        if (Double.isFinite(face)) {
            rungs.add(rung(wound, tool, new Part("holder face", face, radius(stack, Role.HOLDER))));
        }
        double nose = stack.heightOf(Role.SPINDLE_NOSE);
        if (Double.isFinite(nose)) {
            rungs.add(rung(wound, tool, new Part("spindle nose", nose, radius(stack, Role.SPINDLE_NOSE))));
            quillIn(wound, nose).ifPresent(rungs::add);
        }
        return rungs;
    }

    /** Where the nose stands with the quill drawn in, which is what the knee is set to; over a break of the ladder. */
    private Optional<Mark.Rung> quillIn(Scene.Wound wound, double nose) {
        Optional<Double> knee = wound.room().map(OperationRoom::kneeHeight);
        return knee.filter(height -> height - (wound.point().z() + nose) > LEAST_QUILL)
                .map(height -> new Mark.Rung(
                        "quill in",
                        figure(height),
                        top(wound),
                        View.FRONT.across(wound.point()) - radius(wound.on().tool(), Role.QUILL),
                        false));
    }

    private double top(Scene.Wound wound) {
        ToolFrame tool = Frame.tool(scene, View.FRONT, frame.table(), wound);
        return tool.y(wound.point(), ToolFrame.top(wound.on().tool()));
    }

    private static double radius(ToolStack stack, Role role) {
        return stack.only(role).greatestRadius();
    }

    /** A level of the tool: over its point, and how wide the tool is there. */
    private record Part(String name, double over, double radius) {}

    private Mark.Rung rung(Scene.Wound wound, ToolFrame tool, Part part) {
        Point3 point = wound.point();
        return new Mark.Rung(
                part.name(),
                figure(point.z() + part.over()),
                tool.y(point, part.over()),
                View.FRONT.across(point) - part.radius(),
                true);
    }

    private String figure(double height) {
        return scene.height(height);
    }
}
