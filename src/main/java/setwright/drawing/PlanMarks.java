package setwright.drawing;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.Single;
import setwright.geometry.Solid;
import setwright.geometry.Stock;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** Draws the set-up from above. */
final class PlanMarks {
    /** Drawn of the table beyond the outermost thing, mm. */
    private static final double MARGIN = 10;

    private static final double SAME = 1e-6;

    private final Scene scene;
    private final PlanBox frame;
    private final Pen pen = new Pen();

    PlanMarks(Scene scene) {
        this.scene = scene;
        frame = frame(scene);
    }

    private static PlanBox frame(Scene scene) {
        Span across = Frame.of(scene, View.FRONT).across();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Body body : scene.stage().fixtures()) {
            if (body.role() != Role.TABLE && body.role() != Role.VISE_BED) {
                low = Math.min(low, body.solid().box().plan().yLow());
                high = Math.max(high, body.solid().box().plan().yHigh());
            }
        }
        PlanBox part = scene.before().blank().box().plan();
        PlanBox all =
                new PlanBox(across.low(), Math.min(low, part.yLow()), across.high(), Math.max(high, part.yHigh()));
        return new PlanBox(across.low(), all.yLow() - MARGIN, across.high(), all.yHigh() + MARGIN);
    }

    /** The T-slots of the table, their width along Y. */
    private static List<Span> slots(Scene scene) {
        var table = scene.plan().rows().machine().table();
        double half = table.slotWidth().inside() / 2;
        return java.util.stream.IntStream.range(0, table.slots())
                .mapToDouble(
                        i -> (i - (table.slots() - 1) / 2.0) * table.slotPitch().inside())
                .mapToObj(middle -> new Span(middle - half, middle + half))
                .toList();
    }

    Drawing drawn(Set<View> beside) {
        scene.stage().fixtures().stream()
                .sorted(Comparator.comparingDouble(body -> body.solid().box().zHigh()))
                .forEach(this::body);
        part();
        hiddenPacking();
        scene.tool().ifPresent(wound -> new PathMarks(scene, wound).draw(pen, beside));
        return pen.drawing(frame);
    }

    private void body(Body body) {
        Box box = body.solid().box();
        if (body.role() == Role.PARALLEL) {
            visibleEnds(body);
            return;
        }
        rectangle(Fills.of(body.role()), box.plan(), LineRole.VISIBLE);
        if (body.role() == Role.TABLE) {
            slots(scene).forEach(slot -> {
                level(slot.low());
                level(slot.high());
            });
        }
    }

    /** Parallels lie lower than the jaws and mostly under the part; what stands out is seen. */
    private void visibleEnds(Body body) {
        PlanBox box = body.solid().box().plan();
        rectangle(Fill.PARALLEL, box, LineRole.EDGE);
    }

    /** The edge of a T-slot, where it is in sight. */
    private void level(double y) {
        if (y <= frame.yLow() || y >= frame.yHigh()) {
            return;
        }
        pen.line(LineRole.EDGE, new Point2(frame.xLow(), y), new Point2(frame.xHigh(), y));
    }

    private void rectangle(Fill fill, PlanBox box, LineRole role) {
        Span across = new Span(Math.max(box.xLow(), frame.xLow()), Math.min(box.xHigh(), frame.xHigh()));
        Span up = new Span(Math.max(box.yLow(), frame.yLow()), Math.min(box.yHigh(), frame.yHigh()));
        pen.fill(fill, Pen.rectangle(across, up));
        List<Point2> at = Pen.rectangle(across, up);
        pen.line(role(role, box.yLow() < frame.yLow() - SAME), at.get(0), at.get(1));
        pen.line(role(role, box.xHigh() > frame.xHigh() + SAME), at.get(1), at.get(2));
        pen.line(role(role, box.yHigh() > frame.yHigh() + SAME), at.get(2), at.get(3));
        pen.line(role(role, box.xLow() < frame.xLow() - SAME), at.get(3), at.get(0));
    }

    private static LineRole role(LineRole whole, boolean broken) {
        return broken ? LineRole.BROKEN : whole;
    }

    private void part() {
        Stock before = scene.before();
        PlanBox box = before.blank().box().plan();
        rectangle(Fill.PART, box, LineRole.VISIBLE);
        Set<Point2> centres = new LinkedHashSet<>();
        for (Single cut : before.cuts()) {
            if (cut.kind() == Solid.Kind.PRISM || cut.zHigh() < before.top() - SAME) {
                continue;
            }
            double radius = Chords.profile(cut).radiusAt(before.top());
            LineRole rim = centres.add(Chords.axis(cut)) ? LineRole.VISIBLE : LineRole.EDGE;
            pen.add(new Mark.Round(rim, Fill.OPEN, Chords.axis(cut), radius));
        }
        scene.tool().ifPresent(wound -> centres.addAll(wound.on().spots()));
        centres.forEach(this::cross);
    }

    private void cross(Point2 centre) {
        double arm = 9;
        pen.line(LineRole.CENTRE, centre.minus(new Point2(arm, 0)), centre.plus(new Point2(arm, 0)));
        pen.line(LineRole.CENTRE, centre.minus(new Point2(0, arm)), centre.plus(new Point2(0, arm)));
    }

    /** Packing under the part: its outline dashed. */
    private void hiddenPacking() {
        PlanBox part = scene.before().blank().box().plan();
        for (Body body : scene.stage().fixtures()) {
            if (body.role() == Role.PARALLEL || body.role() == Role.PACKING) {
                PlanBox box = body.solid().box().plan();
                double left = Math.max(box.xLow(), part.xLow());
                double right = Math.min(box.xHigh(), part.xHigh());
                for (double y : new double[] {box.yLow(), box.yHigh()}) {
                    if (y > part.yLow() + SAME && y < part.yHigh() - SAME) {
                        pen.line(LineRole.HIDDEN, new Point2(left, y), new Point2(right, y));
                    }
                }
            }
        }
    }
}
