package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The search for the nearest places of two edges. They lie at an end of one of them, where the edges cross, or where
 * a normal is common to both: on the line from a centre square to a straight edge, or on the line of two centres.
 * Every place tried is brought onto both edges first, so that no distance is ever too small.
 */
final class Nearer {
    private static final double MEETING = 1e-7;

    private final Edge path;
    private final Edge other;
    private final @Nullable List<Point2> meetings;
    private double least = Double.POSITIVE_INFINITY;
    private @Nullable Point2 on;
    private @Nullable Point2 off;

    Nearer(Edge path, Edge other) {
        this(path, other, null);
    }

    private Nearer(Edge path, Edge other, @Nullable List<Point2> meetings) {
        this.path = path;
        this.other = other;
        this.meetings = meetings;
    }

    /** The places at which a path meets another edge; of a stretch in common the ends. */
    static List<Point2> meetings(Edge path, Edge other) {
        List<Point2> meetings = new ArrayList<>();
        new Nearer(path, other, meetings).search();
        return meetings;
    }

    Gap gap() {
        if (on == null || off == null) {
            throw new IllegalStateException("Nothing was searched yet.");
        }
        return new Gap(least, on, off);
    }

    void search() {
        tryOnPath(path.from());
        tryOnPath(path.to());
        tryOnOther(other.from());
        tryOnOther(other.to());
        switch (path.kind()) {
            case STRAIGHT -> fromStraight((Straight) path);
            case ARC -> fromArc((Arc) path);
        }
    }

    private void fromStraight(Straight straight) {
        switch (other.kind()) {
            case STRAIGHT -> straightAndStraight(straight, (Straight) other);
            case ARC -> straightAndArc(straight, (Arc) other);
        }
    }

    private void fromArc(Arc arc) {
        switch (other.kind()) {
            case STRAIGHT -> straightAndArc((Straight) other, arc);
            case ARC -> arcAndArc(arc, (Arc) other);
        }
    }

    private void tryOnPath(Point2 p) {
        tryPair(p, other.nearest(p));
    }

    private void tryOnOther(Point2 q) {
        tryPair(path.nearest(q), q);
    }

    private void tryPair(Point2 p, Point2 q) {
        double distance = p.distance(q);
        if (meetings != null && distance < MEETING) {
            meetings.add(p);
        }
        if (distance < least) {
            least = distance;
            on = p;
            off = q;
        }
    }

    private void straightAndStraight(Straight a, Straight b) {
        Point2 along = a.step();
        Point2 across = b.step();
        double turn = along.cross(across);
        if (turn != 0) {
            double fraction = b.from().minus(a.from()).cross(across) / turn;
            if (fraction > 0 && fraction < 1) {
                tryOnPath(a.at(fraction));
            }
        }
    }

    private void straightAndArc(Straight straight, Arc arc) {
        Point2 along = straight.step();
        double length = along.length();
        if (length == 0) {
            return;
        }
        Point2 unit = along.times(1 / length);
        Point2 foot = straight.from()
                .plus(unit.times(arc.centre().minus(straight.from()).dot(unit)));
        tryNear(foot);
        double radius = arc.radius();
        double off = foot.distance(arc.centre());
        if (off < radius) {
            double half = Math.sqrt(radius * radius - off * off);
            tryNear(foot.plus(unit.times(half)));
            tryNear(foot.minus(unit.times(half)));
        }
    }

    private void arcAndArc(Arc a, Arc b) {
        Point2 centres = b.centre().minus(a.centre());
        double apart = centres.length();
        if (apart == 0) {
            return;
        }
        Point2 unit = centres.times(1 / apart);
        double ra = a.radius();
        double rb = b.radius();
        tryNear(a.centre().plus(unit.times(ra)));
        tryNear(a.centre().minus(unit.times(ra)));
        double along = (apart * apart + ra * ra - rb * rb) / (2 * apart);
        double squared = ra * ra - along * along;
        if (squared > 0) {
            Point2 middle = a.centre().plus(unit.times(along));
            Point2 aside = new Point2(-unit.y(), unit.x()).times(Math.sqrt(squared));
            tryNear(middle.plus(aside));
            tryNear(middle.minus(aside));
        }
    }

    private void tryNear(Point2 p) {
        tryOnPath(path.nearest(p));
    }
}
