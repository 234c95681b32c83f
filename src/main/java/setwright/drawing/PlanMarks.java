package setwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.Side;
import setwright.geometry.Single;
import setwright.geometry.Stock;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.Blank;
import setwright.job.DrawnHolding;

/** Draws the set-up from above. */
final class PlanMarks {
    /** Drawn of the table beyond the outermost thing, mm. */
    private static final double MARGIN = 10;

    private static final double SAME = 1e-6;
    private static final int CORNERS = 16;

    /** What lies over the part as one looks down. */
    private static final List<Role> OVER_PART = List.of(Role.STRAP, Role.STUD_NUT, Role.STUD);

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
        List<Body> all = scene.stage().fixtures().stream()
                .sorted(Comparator.comparingDouble(body -> body.solid().box().zHigh()))
                .toList();
        all.stream().filter(body -> !OVER_PART.contains(body.role())).forEach(this::body);
        part();
        hiddenSlots();
        hiddenPacking();
        all.stream().filter(body -> OVER_PART.contains(body.role())).forEach(this::body);
        scene.tool().ifPresent(wound -> new PathMarks(scene, wound).draw(pen, beside));
        return pen.drawing(frame);
    }

    private void body(Body body) {
        Box box = body.solid().box();
        if (body.role() == Role.PARALLEL) {
            visibleEnds(body);
            return;
        }
        if (body.solid() instanceof UprightCylinder round) {
            pen.add(new Mark.Round(LineRole.VISIBLE, Fills.of(body.role()), round.axis(), round.radius()));
        } else if (OVER_PART.contains(body.role()) && body.solid() instanceof Prism prism) {
            outlines(Fills.of(body.role()), prism);
        } else {
            rectangle(Fills.of(body.role()), box.plan(), LineRole.VISIBLE);
        }
        if (body.role() == Role.TABLE) {
            slots(scene).forEach(slot -> {
                level(slot.low());
                level(slot.high());
            });
        }
    }

    private void outlines(Fill fill, Prism prism) {
        for (Outline outline : prism.region().outers()) {
            List<Point2> corners = Flat.points(outline);
            pen.fill(fill, corners);
            pen.closed(LineRole.VISIBLE, corners);
        }
    }

    /** Where the part lies low over the table its slots go on under it: dashed. */
    private void hiddenSlots() {
        if (scene.setUp().holding().kind() != DrawnHolding.Kind.TABLE) {
            return;
        }
        PlanBox part = scene.before().blank().box().plan();
        for (Span slot : slots(scene)) {
            for (double y : new double[] {slot.low(), slot.high()}) {
                if (y > part.yLow() + SAME && y < part.yHigh() - SAME) {
                    pen.line(LineRole.HIDDEN, new Point2(part.xLow(), y), new Point2(part.xHigh(), y));
                }
            }
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
        if (standsRound()) {
            Point2 middle = new Point2((box.xLow() + box.xHigh()) / 2, (box.yLow() + box.yHigh()) / 2);
            pen.add(new Mark.Round(LineRole.VISIBLE, Fill.PART, middle, (box.xHigh() - box.xLow()) / 2));
        } else {
            rectangle(Fill.PART, box, LineRole.VISIBLE);
        }
        gang(box);
        milled(before);
        Set<Point2> centres = new LinkedHashSet<>();
        for (Single cut : before.cuts()) {
            if (!Chords.standsRound(cut) || cut.zHigh() < before.top() - SAME) {
                continue;
            }
            double radius = Chords.profile(cut).radiusAt(before.top());
            LineRole rim = centres.add(Chords.axis(cut)) ? LineRole.VISIBLE : LineRole.EDGE;
            pen.add(new Mark.Round(rim, Fill.OPEN, Chords.axis(cut), radius));
        }
        scene.tool().ifPresent(wound -> centres.addAll(wound.on().spots()));
        centres.forEach(this::cross);
    }

    private boolean standsRound() {
        Blank.Kind kind = scene.plan().job().plan().blank().kind();
        Side up = scene.setUp().up().value();
        return (kind == Blank.Kind.ROUND_BAR || kind == Blank.Kind.TUBE) && (up == Side.TOP || up == Side.BOTTOM);
    }

    /** The other parts of a row in one vise. */
    private void gang(PlanBox part) {
        for (int i = 1; i < scene.inARow(); i++) {
            double by = i * (part.xHigh() - part.xLow());
            rectangle(
                    Fill.PART,
                    new PlanBox(part.xLow() + by, part.yLow(), part.xHigh() + by, part.yHigh()),
                    LineRole.NEIGHBOUR);
        }
    }

    private static boolean covers(PlanBox cut, PlanBox part) {
        return cut.xLow() <= part.xLow() + SAME
                && cut.xHigh() >= part.xHigh() - SAME
                && cut.yLow() <= part.yLow() + SAME
                && cut.yHigh() >= part.yHigh() - SAME;
    }

    /** Rims of what was milled into the top. */
    private void milled(Stock stock) {
        List<Prism> layers = stock.layers();
        boolean milled = stock.cuts().stream().anyMatch(cut -> !Chords.standsRound(cut));
        if (!milled || layers.isEmpty()) {
            return;
        }
        Region top = layers.get(layers.size() - 1).region();
        top.outers().forEach(this::rim);
        top.holes().forEach(this::rim);
    }

    private void rim(Outline outline) {
        List<Point2> points = new ArrayList<>();
        for (Edge edge : outline.edges()) {
            int count = edge.kind() == Edge.Kind.ARC ? CORNERS : 1;
            for (int i = 0; i < count; i++) {
                points.add(edge.at((double) i / count));
            }
        }
        pen.closed(LineRole.EDGE, points);
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
            if (body.role() == Role.FIXTURE
                    && body.solid() instanceof UprightCylinder round
                    && covers(part, round.box().plan())) {
                pen.add(new Mark.Round(LineRole.HIDDEN, null, round.axis(), round.radius()));
            }
            if (body.role() == Role.PARALLEL || body.role() == Role.PACKING) {
                PlanBox box = body.solid().box().plan();
                double left = Math.max(box.xLow(), part.xLow());
                double right = Math.min(box.xHigh(), part.xHigh());
                for (double y : new double[] {box.yLow(), box.yHigh()}) {
                    if (y > part.yLow() + SAME && y < part.yHigh() - SAME) {
                        pen.line(LineRole.HIDDEN, new Point2(left, y), new Point2(right, y));
                    }
                }
                if (body.role() == Role.PACKING) {
                    ends(box, part);
                }
            }
        }
    }

    private void ends(PlanBox box, PlanBox part) {
        double front = Math.max(box.yLow(), part.yLow());
        double back = Math.min(box.yHigh(), part.yHigh());
        for (double x : new double[] {box.xLow(), box.xHigh()}) {
            if (x > part.xLow() + SAME && x < part.xHigh() - SAME) {
                pen.line(LineRole.HIDDEN, new Point2(x, front), new Point2(x, back));
            }
        }
    }
}
