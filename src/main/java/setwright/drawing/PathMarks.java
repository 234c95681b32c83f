package setwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Move;
import setwright.geometry.Nearest;
import setwright.geometry.Point3;
import setwright.geometry.Role;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.plan.room.OperationRoom;

/** The way of the tool from above, the cutter on it, and what it meets. */
final class PathMarks {
    /** Corners of a round edge. */
    private static final int CORNERS = 24;

    private final Scene scene;
    private final Scene.Wound wound;

    PathMarks(Scene scene, Scene.Wound wound) {
        this.scene = scene;
        this.wound = wound;
    }

    void draw(Pen pen, Set<View> beside) {
        Set<List<Point2>> drawn = new LinkedHashSet<>();
        for (Move move : wound.on().path().moves()) {
            if (!move.isUpright() && drawn.add(line(move.plan()))) {
                pen.line(role(move), line(move.plan()));
            }
        }
        cutterAtEnds(pen);
        cutter(pen);
        numbers(pen);
        touches(pen, beside);
    }

    private LineRole role(Move move) {
        return switch (move.kind()) {
            case CUT, APPROACH, RUN_OFF -> LineRole.PATH;
            case CROSS, PLUNGE, RETRACT -> LineRole.CROSSING;
        };
    }

    private static List<Point2> line(Edge edge) {
        List<Point2> points = new ArrayList<>();
        int count = edge.kind() == Edge.Kind.ARC ? CORNERS : 1;
        for (int i = 0; i <= count; i++) {
            points.add(edge.at((double) i / count));
        }
        return points;
    }

    private double radius() {
        return wound.on().tool().only(Role.CUTTER).greatestRadius();
    }

    private void cutter(Pen pen) {
        Point2 here = wound.point().plan();
        double holder = wound.on().tool().only(Role.HOLDER).greatestRadius();
        if (holder > radius()) {
            pen.add(new Mark.Round(LineRole.NEIGHBOUR, null, here, holder));
        }
        pen.add(new Mark.Round(LineRole.VISIBLE, null, here, radius()));
        pen.line(LineRole.CENTRE, here.minus(new Point2(radius() + 3, 0)), here.plus(new Point2(radius() + 3, 0)));
        pen.line(LineRole.CENTRE, here.minus(new Point2(0, radius() + 3)), here.plus(new Point2(0, radius() + 3)));
    }

    private void cutterAtEnds(Pen pen) {
        Set<Point2> ends = new LinkedHashSet<>(wound.on().spots());
        for (Move move : wound.on().path().moves()) {
            if (move.kind() == Move.Kind.CUT) {
                ends.add(move.from().plan());
                ends.add(move.to().plan());
            }
        }
        ends.remove(wound.point().plan());
        ends.forEach(end -> pen.add(new Mark.Round(LineRole.NEIGHBOUR, null, end, radius())));
    }

    /** Holes bear the numbers that they have on the sheet. */
    private void numbers(Pen pen) {
        HoleNumbers numbers = HoleNumbers.of(scene.stage());
        double off = radius() * 0.75 + 2;
        for (Point2 spot : wound.on().spots()) {
            String number = Integer.toString(numbers.at(spot));
            Point2 at = spot.plus(new Point2(off, off));
            pen.add(new Mark.Text(at, Mark.Anchor.LEFT, Mark.Lettering.SMALL, number));
        }
    }

    private void touches(Pen pen, Set<View> beside) {
        List<Nearest> touching = NearMarks.deepest(wound);
        for (Nearest near : touching) {
            var box = near.body().solid().box().plan();
            Clip clip = new Clip(new Span(box.xLow(), box.xHigh()), new Span(box.yLow(), box.yHigh()));
            Point2 tool = near.place().toolPoint().plan();
            hatch(pen, clip.of(disc(tool, near.section().profile().greatestRadius())));
            spotsThatMeet(near).forEach(spot -> hatch(pen, clip.of(disc(spot, radius()))));
            if (NearMarks.shownIn(View.TOP, near, beside)) {
                pen.add(new Mark.CallOut(near.place().at().plan(), NearMarks.words(scene, near)));
            }
        }
        if (touching.isEmpty() && !wound.near().isEmpty()) {
            clearance(pen, wound.near().get(0), beside);
        }
    }

    private List<Point2> spotsThatMeet(Nearest near) {
        return wound.room().map(OperationRoom::packing).orElse(List.of()).stream()
                .filter(under -> under.body().equals(near.body().name()) && under.clearance() < 0)
                .map(under -> wound.on().spots().get(under.spot()))
                .toList();
    }

    private static void hatch(Pen pen, List<Point2> area) {
        if (area.size() > 2) {
            pen.hatch(Hatch.TOUCH, area);
            pen.closed(LineRole.EDGE, area);
        }
    }

    private static List<Point2> disc(Point2 centre, double radius) {
        return line(setwright.geometry.plane.Arc.of(centre, radius, 0, 2 * Math.PI * (CORNERS - 1) / CORNERS));
    }

    private void clearance(Pen pen, Nearest near, Set<View> beside) {
        if (!NearMarks.shownIn(View.TOP, near, beside)) {
            return;
        }
        Point3 at = near.place().at();
        Point3 from = at.minus(near.place().toward().times(near.clearance()));
        pen.add(new Mark.Dimension(
                from.plan(),
                at.plan(),
                new Point2(0, 0),
                scene.clearance(near.clearance()) + " to " + near.body().name()));
    }
}
