package setwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import setwright.geometry.Box;
import setwright.geometry.Nearest;
import setwright.geometry.Point3;
import setwright.geometry.ToolStack;
import setwright.geometry.plane.Point2;

/** What the tool touches on its way, hatched and called out; where nothing touches, the least clearance. */
final class NearMarks {
    /** So many things that are touched are called out; the rest is hatched only. */
    private static final int CALLED_OUT = 3;

    private final Scene scene;
    private final Frame frame;

    NearMarks(Scene scene, Frame frame) {
        this.scene = scene;
        this.frame = frame;
    }

    void draw(Pen pen, Set<View> beside) {
        scene.tool().ifPresent(wound -> {
            List<Nearest> touching =
                    wound.near().stream().filter(Nearest::touches).toList();
            for (Nearest one : touching) {
                touch(pen, wound, one, beside);
            }
            if (touching.isEmpty() && !wound.near().isEmpty()) {
                clearance(pen, wound, wound.near().get(0), beside);
            }
        });
    }

    /** The deepest touch of every body. */
    static List<Nearest> deepest(Scene.Wound wound) {
        Map<String, Nearest> worst = new LinkedHashMap<>();
        wound.near().stream()
                .filter(Nearest::touches)
                .forEach(one -> worst.putIfAbsent(one.body().name(), one));
        return new ArrayList<>(worst.values());
    }

    /** True where this view is the one of those on the sheet that shows the direction best. */
    static boolean shownIn(View view, Nearest near, Set<View> beside) {
        return View.seeing(near.place().toward()).stream()
                .filter(beside::contains)
                .findFirst()
                .filter(best -> best == view)
                .isPresent();
    }

    private void touch(Pen pen, Scene.Wound wound, Nearest near, Set<View> beside) {
        ToolFrame tool = Frame.tool(scene, frame.view(), frame.table(), wound);
        Box box = near.body().solid().box();
        Clip clip = new Clip(
                new Span(frame.view().left(box), frame.view().right(box)),
                new Span(frame.table().of(box.zLow()), frame.table().of(box.zHigh())));
        Point2 at = tool.of(near.place().toolPoint(), near.place().at());
        for (ToolFrame.Piece piece :
                tool.pieces(new ToolStack(List.of(near.section())), near.place().toolPoint())) {
            List<Point2> common = clip.of(piece.corners());
            if (common.size() > 2) {
                pen.hatch(Hatch.TOUCH, common);
                pen.closed(LineRole.VISIBLE, common);
                at = Moved.box(common).middle();
            }
        }
        if (shownIn(frame.view(), near, beside) && isCalledOut(wound, near)) {
            pen.add(new Mark.CallOut(at, words(scene, near)));
        }
    }

    private static boolean isCalledOut(Scene.Wound wound, Nearest near) {
        int rank = deepest(wound).indexOf(near);
        return rank >= 0 && rank < CALLED_OUT;
    }

    /** {@code 3.04 mm into front parallel}. */
    static String words(Scene scene, Nearest near) {
        return near.clearance() < -5e-4
                ? scene.clearance(-near.clearance()) + " into " + near.body().name()
                : "touches " + near.body().name();
    }

    private void clearance(Pen pen, Scene.Wound wound, Nearest near, Set<View> beside) {
        if (shownIn(frame.view(), near, beside)) {
            pen.add(new Mark.Dimension(
                    onTool(wound, near),
                    onBody(near),
                    new Point2(0, 0),
                    scene.clearance(near.clearance()) + " to " + near.body().name()));
        }
    }

    private Point2 onTool(Scene.Wound wound, Nearest near) {
        ToolFrame tool = Frame.tool(scene, frame.view(), frame.table(), wound);
        Point3 from = near.place().at().minus(near.place().toward().times(near.clearance()));
        return tool.of(near.place().toolPoint(), from);
    }

    private Point2 onBody(Nearest near) {
        Point3 at = near.place().at();
        return new Point2(frame.view().across(at), frame.table().of(at.z()));
    }

    /** Half way between tool and body, as drawn in a view. */
    static Point2 middle(Scene scene, View view, Nearest near) {
        Point3 at = near.place().at();
        if (view == View.TOP) {
            return at.minus(near.place().toward().times(near.clearance() / 2)).plan();
        }
        NearMarks marks = new NearMarks(scene, Frame.of(scene, view));
        return scene.tool()
                .map(wound -> marks.onTool(wound, near).plus(marks.onBody(near)).times(0.5))
                .orElse(view.of(at));
    }
}
