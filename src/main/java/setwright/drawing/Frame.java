package setwright.drawing;

import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.plane.PlanBox;

/**
 * What of the table is in sight in an upright view: across the drawing, the heights as drawn, and the empty heights that
 * are left out. It does not change while the tool is wound along.
 */
record Frame(View view, Span across, Span up, Folds table) {
    /** Drawn of the table below its top, mm. */
    private static final double TABLE = 9;

    /** Drawn beyond the outermost thing, mm. */
    private static final double MARGIN = 14;

    /** Kept of the vise's body above the table and below its bed, mm. */
    private static final double KEPT = 8;

    /** The vise's body is shown to its rear end where that is so near to the jaw, mm. */
    private static final double BED_SHOWN = 50;

    /** Room left over the highest thing where there is no tool, mm. */
    private static final double OVER = 12;

    static Frame of(Scene scene, View view) {
        double bed = Math.min(scene.heights().bed(), scene.lowest());
        Folds table = Folds.between(KEPT, bed - KEPT);
        double top = scene.tool()
                .map(wound -> {
                    ToolFrame tool = tool(scene, view, table, wound);
                    double highest = wound.on().path().box().zHigh();
                    return table.of(highest)
                            + tool.tool().of(ToolFrame.top(wound.on().tool()))
                            + ToolMarks.BEYOND;
                })
                .orElse(table.of(highest(scene)) + OVER);
        return new Frame(view, across(scene, view), new Span(-TABLE, top), table);
    }

    static ToolFrame tool(Scene scene, View view, Folds table, Scene.Wound wound) {
        return ToolFrame.of(view, table, wound.on().tool(), wound.on().lowest(), highest(scene));
    }

    /** Height of everything that stands on the table. */
    static double highest(Scene scene) {
        return Math.max(
                scene.before().top(),
                scene.stage().fixtures().stream()
                        .mapToDouble(body -> body.solid().box().zHigh())
                        .max()
                        .orElse(0));
    }

    private static Span across(Scene scene, View view) {
        double low = view.left(scene.before().blank().box());
        double high = view.right(scene.before().blank().box());
        if (view == View.FRONT) {
            high += (scene.inARow() - 1) * (high - low);
        }
        for (Body body : scene.stage().fixtures()) {
            if (body.role() != Role.TABLE && body.role() != Role.VISE_BED) {
                low = Math.min(low, view.left(body.solid().box()));
                high = Math.max(high, view.right(body.solid().box()));
            }
        }
        low = Math.min(low, Math.max(leftOfBed(scene, view), low - BED_SHOWN)) - MARGIN;
        if (scene.tool().isPresent()) {
            Scene.Wound wound = scene.tool().get();
            Box path = wound.on().path().box();
            double radius = wound.on().tool().greatestRadius();
            low = Math.min(low, view.left(path) - radius - 2);
            high = Math.max(high, view.right(path) + radius + 2);
        }
        return new Span(low, high + MARGIN);
    }

    private static double leftOfBed(Scene scene, View view) {
        return scene.stage().fixtures().stream()
                .filter(body -> body.role() == Role.VISE_BED)
                .mapToDouble(body -> view.left(body.solid().box()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    PlanBox box() {
        return new PlanBox(across.low(), up.low(), across.high(), up.high());
    }
}
