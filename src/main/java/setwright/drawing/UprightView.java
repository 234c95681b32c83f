package setwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnDevice;
import setwright.plan.part.TableSlots;
import setwright.shop.MachineTable;
import setwright.shop.VBlocks;

/**
 * The set-up seen from the side, cut by the plane of the spindle: what lies before the plane is taken away, what it cuts
 * is hatched, what lies behind is drawn as one sees it. Tools are not cut.
 */
final class UprightView {
    private static final double SAME = 1e-6;

    private final Scene scene;
    private final View view;
    private final Frame frame;
    private final Chords plane;
    private final Pen pen = new Pen();

    private UprightView(Scene scene, View view) {
        this.scene = scene;
        this.view = view;
        frame = Frame.of(scene, view);
        plane = new Chords(view, plane(scene, view));
    }

    /** @param beside the views that are on the same sheet; what is called out stands in the one that shows it best */
    static Drawing of(Scene scene, View view, Set<View> beside) {
        return new UprightView(scene, view).drawn(beside);
    }

    /** Through the spindle where that is over the part, else through the middle of the part. */
    private static double plane(Scene scene, View view) {
        Box part = scene.before().blank().box();
        double low = view.nearest(part);
        double high = view.farthest(part);
        return scene.tool()
                .map(wound -> view.away(wound.point()))
                .filter(away -> away > low && away < high)
                .orElse((low + high) / 2);
    }

    private Drawing drawn(Set<View> beside) {
        bodies();
        PartMarks part = new PartMarks(scene, frame, plane);
        part.draw(pen);
        gang();
        scene.tool().ifPresent(wound -> new ToolMarks(scene, frame, wound).draw(pen));
        new NearMarks(scene, frame).draw(pen, beside);
        return pen.drawing(frame.box());
    }

    /** The other parts of a row in one vise, as neighbours. */
    private void gang() {
        Box part = scene.before().blank().box();
        double length = view.right(part) - view.left(part);
        Span up = new Span(
                frame.table().of(part.zLow()), frame.table().of(scene.before().top()));
        for (int i = 1; view == View.FRONT && i < scene.inARow(); i++) {
            pen.closed(
                    LineRole.NEIGHBOUR,
                    Pen.rectangle(new Span(view.left(part) + i * length, view.right(part) + i * length), up));
        }
    }

    private void bodies() {
        List<Body> all = new ArrayList<>(scene.stage().fixtures());
        all.removeIf(body -> view.farthest(box(body)) <= plane.at() + SAME);
        all.sort(Comparator.comparingDouble((Body body) -> view.nearest(box(body)))
                .reversed()
                .thenComparing(body -> !isCut(body)));
        all.stream().filter(body -> !isCut(body)).forEach(this::body);
        all.stream().filter(this::isCut).forEach(this::body);
    }

    private static Box box(Body body) {
        return body.solid().box();
    }

    private boolean isCut(Body body) {
        return view.nearest(box(body)) < plane.at() - SAME;
    }

    private void body(Body body) {
        Box box = box(body);
        Span whole = new Span(Math.max(box.zLow(), frame.up().low()), box.zHigh());
        Span across = new Span(
                Math.max(view.left(box), frame.across().low()),
                Math.min(view.right(box), frame.across().high()));
        for (Span piece : frame.table().pieces(whole)) {
            Span up = new Span(frame.table().of(piece.low()), frame.table().of(piece.high()));
            if (body.role() == Role.TABLE && view == View.SIDE) {
                slotted(across, up);
                continue;
            }
            if (view == View.SIDE && vee(body, across, up)) {
                continue;
            }
            pen.fill(Fills.of(body.role()), Pen.rectangle(across, up));
            if (isCut(body) && body.role() != Role.TABLE) {
                pen.hatch(Fills.hatch(body.role()), Pen.rectangle(across, up));
            }
            side(across.low(), up, across.low() > view.left(box) + SAME);
            side(across.high(), up, across.high() < view.right(box) - SAME);
            level(across, up.low(), piece.low() > box.zLow() + SAME);
            level(across, up.high(), piece.high() < box.zHigh() - SAME);
        }
    }

    /** The table from its end: its top goes down at every slot. */
    private void slotted(Span across, Span up) {
        MachineTable table = scene.plan().rows().machine().table();
        double half = table.slotWidth().inside() / 2;
        double left = across.low();
        List<Double> middles = TableSlots.all(table).stream()
                .map(y -> -y)
                .filter(x -> x - half > across.low() && x + half < across.high())
                .sorted()
                .toList();
        for (double middle : middles) {
            land(new Span(left, middle - half), up, left > across.low());
            pen.line(LineRole.VISIBLE, new Point2(middle - half, up.low()), new Point2(middle - half, up.high()));
            left = middle + half;
        }
        land(new Span(left, across.high()), up, left > across.low());
    }

    private void land(Span across, Span up, boolean afterSlot) {
        pen.fill(Fill.TABLE, Pen.rectangle(across, up));
        level(across, up.high(), false);
        level(across, up.low(), true);
        if (afterSlot) {
            pen.line(LineRole.VISIBLE, new Point2(across.low(), up.low()), new Point2(across.low(), up.high()));
        }
    }

    /** A V-block from its end. */
    private boolean vee(Body body, Span across, Span up) {
        Optional<VBlocks> found = scene.setUp().holding() instanceof DrawnDevice device
                ? scene.plan().rows().row(device.device().value(), VBlocks.class)
                : Optional.empty();
        if (found.isEmpty() || body.role() != Role.PACKING) {
            return false;
        }
        double apex = frame.table().of(found.get().apexHeight().inside());
        double middle = (across.low() + across.high()) / 2;
        double half = Math.min(
                (up.high() - apex) * StrictMath.tan(found.get().angle().inside() / 2),
                (across.high() - across.low()) / 2);
        List<Point2> corners = List.of(
                new Point2(across.low(), up.low()),
                new Point2(across.high(), up.low()),
                new Point2(across.high(), up.high()),
                new Point2(middle + half, up.high()),
                new Point2(middle, apex),
                new Point2(middle - half, up.high()),
                new Point2(across.low(), up.high()));
        pen.fill(Fills.of(body.role()), corners);
        pen.closed(LineRole.VISIBLE, corners);
        return true;
    }

    private void side(double x, Span up, boolean broken) {
        pen.line(broken ? LineRole.BROKEN : LineRole.VISIBLE, new Point2(x, up.low()), new Point2(x, up.high()));
    }

    private void level(Span across, double y, boolean broken) {
        pen.line(
                broken ? LineRole.BROKEN : LineRole.VISIBLE, new Point2(across.low(), y), new Point2(across.high(), y));
    }
}
