package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;

/** The way of the tool point: moves that follow one another, in table millimetres. */
public record ToolPath(Point3 start, List<Move> moves) {
    public ToolPath {
        moves = List.copyOf(moves);
    }

    /** A path without moves yet. */
    public static ToolPath from(Point3 start) {
        return new ToolPath(start, List.of());
    }

    public Point3 end() {
        return moves.isEmpty() ? start : moves.get(moves.size() - 1).to();
    }

    /** This path and then straight on. */
    public ToolPath to(Move.Kind kind, Point3 place) {
        return then(Move.straight(kind, end(), place));
    }

    /** This path and then level round a centre. */
    public ToolPath round(Move.Kind kind, Point2 centre, Point2 to, boolean anticlockwise) {
        Point3 end = end();
        return then(new Move(kind, new Arc(end.plan(), to, centre, anticlockwise), end.z(), end.z()));
    }

    /** This path and then a whole turn round a centre, back to the same place. */
    public ToolPath fullTurn(Move.Kind kind, Point2 centre, boolean anticlockwise) {
        Point2 here = end().plan();
        Point2 opposite = centre.times(2).minus(here);
        return round(kind, centre, opposite, anticlockwise).round(kind, centre, here, anticlockwise);
    }

    /** This path and then straight up or down. */
    public ToolPath toHeight(Move.Kind kind, double z) {
        return to(kind, Point3.of(end().plan(), z));
    }

    /** This path and then level to a place in plan. */
    public ToolPath across(Move.Kind kind, Point2 place) {
        return to(kind, Point3.of(place, end().z()));
    }

    public ToolPath then(Move move) {
        List<Move> all = new ArrayList<>(moves);
        all.add(move);
        return new ToolPath(start, all);
    }

    /** The length of the moves of these kinds; of all where none is named. */
    public double length(Move.Kind... kinds) {
        List<Move.Kind> wanted = List.of(kinds.length == 0 ? Move.Kind.values() : kinds);
        return moves.stream()
                .filter(move -> wanted.contains(move.kind()))
                .mapToDouble(Move::length)
                .sum();
    }

    /** The moves of these kinds alone, each from where it starts. */
    public ToolPath only(Move.Kind... kinds) {
        List<Move.Kind> wanted = List.of(kinds);
        return new ToolPath(
                start,
                moves.stream().filter(move -> wanted.contains(move.kind())).toList());
    }

    /** The box that the tool point stays in. */
    public Box box() {
        Box box = Box.of(start, start);
        for (Move move : moves) {
            PlanBox plan = move.plan().box();
            box = box.and(new Box(plan, Math.min(move.zFrom(), move.zTo()), Math.max(move.zFrom(), move.zTo())));
        }
        return box;
    }

    /** The same path, shifted. */
    public ToolPath shifted(Point3 by) {
        PlanMap plan = PlanMap.shift(by.x(), by.y());
        List<Move> shifted = moves.stream()
                .map(move ->
                        new Move(move.kind(), move.plan().mapped(plan), move.zFrom() + by.z(), move.zTo() + by.z()))
                .toList();
        return new ToolPath(start.plus(by), shifted);
    }
}
