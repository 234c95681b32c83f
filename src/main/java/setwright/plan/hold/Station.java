package setwright.plan.hold;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.cutting.CutForce;
import setwright.cutting.TurnPoint;
import setwright.geometry.Move;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;

/**
 * A place where a milling cutter is in the work, and the way it is fed there. What lies on a straight stretch between
 * two stations of the same heading is between their loads.
 *
 * @param at from the part's left front bottom corner, mm
 * @param heading of the feed, of length 1
 */
record Station(Vector at, Point2 heading) {
    /** Stretches that an arc is looked at in. */
    private static final int OF_ARC = 4;

    /** The ends of every cut on the first and on the last pass; run-in and run-off count from the edge of the part. */
    static List<Station> along(Heights heights, OperationStage stage, double halfDepth) {
        List<Move> cuts = stage.path().moves().stream()
                .filter(move -> move.kind() == Move.Kind.CUT)
                .toList();
        double first = cuts.stream().mapToDouble(Move::zTo).max().orElse(0);
        double last = cuts.stream().mapToDouble(Move::zTo).min().orElse(0);
        Set<Station> found = new LinkedHashSet<>();
        for (Move cut : cuts) {
            if (cut.zTo() == first || cut.zTo() == last) {
                double height = cut.zTo() + halfDepth - heights.partBottom();
                places(cut.plan()).forEach(on -> found.add(of(heights, on, height)));
            }
        }
        return List.copyOf(found);
    }

    /** A place in plan with the way it is passed. */
    private record Passing(Point2 place, Point2 step) {}

    private static List<Passing> places(Edge edge) {
        List<Passing> found = new ArrayList<>();
        switch (edge.kind()) {
            case STRAIGHT -> {
                Point2 step = edge.to().minus(edge.from());
                found.add(new Passing(edge.from(), step));
                found.add(new Passing(edge.to(), step));
            }
            case ARC -> {
                Arc arc = (Arc) edge;
                for (int i = 0; i <= OF_ARC; i++) {
                    Point2 place = arc.at(i / (double) OF_ARC);
                    Point2 arm = place.minus(arc.centre());
                    Point2 ahead = new Point2(-arm.y(), arm.x());
                    found.add(new Passing(place, arc.anticlockwise() ? ahead : ahead.times(-1)));
                }
            }
        }
        return found;
    }

    private static Station of(Heights heights, Passing on, double height) {
        double x = Math.max(heights.left(), Math.min(heights.right(), on.place().x()));
        double y = Math.max(heights.front(), Math.min(heights.back(), on.place().y()));
        double length = on.step().length();
        Point2 heading = length > 0 ? on.step().times(1 / length) : new Point2(1, 0);
        return new Station(new Vector(x - heights.left(), y - heights.front(), height), heading);
    }

    /** The work feels the opposite of the cutter; fed the other way, feed and cross turn round together. */
    Load onWork(TurnPoint moment, int way) {
        CutForce force = moment.force();
        double x = force.feed() * heading.x() - force.cross() * heading.y();
        double y = force.feed() * heading.y() + force.cross() * heading.x();
        return new Load("cut", at, new Vector(-way * x, -way * y, force.axial()), new Vector(0, 0, -force.torque()));
    }
}
