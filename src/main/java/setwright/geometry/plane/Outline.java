package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed figure of straight and round edges, each starting exactly where the one before ends, that does not cross
 * itself; run either way round. Its area, distances and the question what lies inside are answered in closed form.
 */
public final class Outline {
    /** Sines of angles below this are no turn. */
    private static final double TURNS = 1e-9;

    private final List<Edge> edges;
    private final PlanBox[] boxes;
    private final List<Rise> rises;
    private final PlanBox box;
    private final Moments moments;

    public Outline(List<Edge> edges) {
        this.edges = List.copyOf(edges);
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("An outline needs edges.");
        }
        boxes = new PlanBox[edges.size()];
        PlanBox all = PlanBox.EMPTY;
        Moments sum = Moments.NONE;
        for (int i = 0; i < boxes.length; i++) {
            requireJoined(edges.get(i), edges.get((i + 1) % boxes.length));
            boxes[i] = edges.get(i).box();
            all = all.and(boxes[i]);
            sum = sum.plus(edges.get(i).swept());
        }
        box = all;
        moments = sum;
        rises = Rise.of(this.edges);
    }

    private static void requireJoined(Edge edge, Edge next) {
        if (!edge.to().at(next.from())) {
            throw new IllegalArgumentException(
                    "An outline has a gap from " + edge.to() + " to " + next.from() + "; its edges must join.");
        }
    }

    /** The rectangle with two opposite corners. */
    public static Outline rectangle(Point2 corner, Point2 opposite) {
        PlanBox box = PlanBox.of(corner, opposite);
        return polygon(List.of(
                new Point2(box.xLow(), box.yLow()),
                new Point2(box.xHigh(), box.yLow()),
                new Point2(box.xHigh(), box.yHigh()),
                new Point2(box.xLow(), box.yHigh())));
    }

    public static Outline polygon(List<Point2> corners) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            edges.add(new Straight(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return new Outline(edges);
    }

    public static Outline circle(Point2 centre, double radius) {
        Point2 right = centre.plus(new Point2(radius, 0));
        Point2 left = centre.minus(new Point2(radius, 0));
        return new Outline(List.of(new Arc(right, left, centre, true), new Arc(left, right, centre, true)));
    }

    /** What a disc covers that moves straight from one place to another: round at both ends. */
    public static Outline slot(Point2 from, Point2 to, double radius) {
        double length = from.distance(to);
        if (length == 0) {
            return circle(from, radius);
        }
        Point2 along = to.minus(from).times(radius / length);
        Point2 aside = new Point2(along.y(), -along.x());
        Point2 a = from.plus(aside);
        Point2 b = to.plus(aside);
        Point2 c = to.minus(aside);
        Point2 d = from.minus(aside);
        return new Outline(
                List.of(new Straight(a, b), new Arc(b, c, to, true), new Straight(c, d), new Arc(d, a, from, true)));
    }

    public List<Edge> edges() {
        return edges;
    }

    public PlanBox box() {
        return box;
    }

    public double area() {
        return Math.abs(moments.area());
    }

    public double length() {
        return edges.stream().mapToDouble(Edge::length).sum();
    }

    public boolean anticlockwise() {
        return moments.area() >= 0;
    }

    /** Area, never negative, and its first moments. */
    public Moments moments() {
        return anticlockwise() ? moments : moments.times(-1);
    }

    /** True where it nowhere turns against the way it runs. */
    public boolean isConvex() {
        double side = anticlockwise() ? 1 : -1;
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            Edge next = edges.get((i + 1) % edges.size());
            boolean inward = edge instanceof Arc arc && arc.anticlockwise() != side > 0;
            if (inward || side * edge.heading(1).cross(next.heading(0)) < -TURNS) {
                return false;
            }
        }
        return true;
    }

    /** The place that lies furthest in a direction; only for an outline that is {@link #isConvex convex}. */
    public Point2 furthest(double x, double y) {
        Point2 best = edges.get(0).from();
        double most = best.x() * x + best.y() * y;
        for (Edge edge : edges) {
            Point2 place = edge.furthest(x, y);
            double ahead = place.x() * x + place.y() * y;
            if (ahead > most) {
                most = ahead;
                best = place;
            }
        }
        return best;
    }

    /** True inside; on the line itself either answer. */
    public boolean contains(Point2 p) {
        if (p.x() < box.xLow() || p.x() > box.xHigh() || p.y() < box.yLow() || p.y() > box.yHigh()) {
            return false;
        }
        boolean inside = false;
        for (Rise rise : rises) {
            inside ^= rise.isCrossedToTheRightOf(p);
        }
        return inside;
    }

    /** The exact distance of a path from the line of this outline, whichever side it is on. */
    public Gap gap(Edge path) {
        PlanBox around = path.box();
        Gap best = new Gap(Double.POSITIVE_INFINITY, path.from(), edges.get(0).from());
        for (int i = 0; i < boxes.length; i++) {
            if (boxes[i].gap(around) < best.distance()) {
                best = best.nearer(Gap.between(path, edges.get(i)));
            }
        }
        return best;
    }

    /** True where the lines of the two outlines touch or cross. */
    public boolean meets(Outline other) {
        if (box.gap(other.box) > Gap.MEETS) {
            return false;
        }
        for (int i = 0; i < boxes.length; i++) {
            if (boxes[i].gap(other.box) <= Gap.MEETS && other.gap(edges.get(i)).meets()) {
                return true;
            }
        }
        return false;
    }

    public Outline mapped(PlanMap map) {
        return new Outline(edges.stream().map(edge -> edge.mapped(map)).toList());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline outline && edges.equals(outline.edges);
    }

    @Override
    public int hashCode() {
        return edges.hashCode();
    }

    @Override
    public String toString() {
        return "Outline" + edges;
    }
}
