package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An area of the plan: outer outlines less holes, in one or several pieces; possibly none. An island in a hole is an
 * outer outline of its own.
 *
 * <p>Booleans keep outlines that do not meet as they are, arcs and all. Where outlines meet they are made of straight
 * pieces within {@link Overlay#FINE} mm, so that the result is never smaller than the true one: this region counts as
 * the body and is flattened outward, what is taken away is flattened inward.
 */
public final class Region {
    public static final Region NONE = new Region(List.of(), List.of());

    /** How far in mm arcs may be made straight, on the side of caution, where outlines meet. */
    public static final double FLATNESS = 0.005;

    /** How flat in mm arcs are made where an area is wanted: 5e-5 of the area of a 6 mm hole. */
    public static final double FOR_AREAS = 1e-4;

    private final List<Outline> outers;
    private final List<Outline> holes;
    private final PlanBox box;
    // Worked out when first asked for; the same whoever asks.
    private volatile @Nullable Flat flat;

    public Region(List<Outline> outers, List<Outline> holes) {
        this.outers = List.copyOf(outers);
        this.holes = List.copyOf(holes);
        box = outers.stream().map(Outline::box).reduce(PlanBox.EMPTY, PlanBox::and);
    }

    public static Region of(Outline outer) {
        return new Region(List.of(outer), List.of());
    }

    public static Region rectangle(Point2 corner, Point2 opposite) {
        return of(Outline.rectangle(corner, opposite));
    }

    /** The least region without inward corners round places; none where they are on one line. */
    public static Region around(List<Point2> places) {
        List<Point2> hull = Hull.around(places);
        return hull.size() < 3 ? NONE : of(Outline.polygon(hull));
    }

    public static Region circle(Point2 centre, double radius) {
        return of(Outline.circle(centre, radius));
    }

    public List<Outline> outers() {
        return outers;
    }

    public List<Outline> holes() {
        return holes;
    }

    public Stream<Outline> outlines() {
        return Stream.concat(outers.stream(), holes.stream());
    }

    public boolean isEmpty() {
        return outers.isEmpty();
    }

    public PlanBox box() {
        return box;
    }

    public double area() {
        return moments().area();
    }

    public Moments moments() {
        Moments sum = Moments.NONE;
        for (Outline outer : outers) {
            sum = sum.plus(outer.moments());
        }
        for (Outline hole : holes) {
            sum = sum.plus(hole.moments().times(-1));
        }
        return sum;
    }

    /** True inside; on an outline either answer. */
    public boolean contains(Point2 p) {
        return count(outers, p) > count(holes, p);
    }

    private static int count(List<Outline> outlines, Point2 p) {
        int count = 0;
        for (Outline outline : outlines) {
            if (outline.contains(p)) {
                count++;
            }
        }
        return count;
    }

    /** The distance of a place from this region, negative inside by the distance to its edge. */
    public double distance(Point2 p) {
        return gap(Straight.point(p)).distance();
    }

    /**
     * The exact distance of a path from this region. Where the path runs inside, the greatest depth it reaches is
     * counted negative; on a stretch inside a region that is not convex this may be a lesser depth, never a greater.
     */
    public Gap gap(Edge path) {
        Gap line = lineGap(path);
        if (!line.meets()) {
            return contains(path.from()) ? new Depth(this, path).of(line) : line;
        }
        return path.from().at(path.to()) ? line : new Depth(this, path).whereItCrosses(line);
    }

    /** The exact distance of a path from the nearest outline, whichever side it is on. */
    Gap lineGap(Edge path) {
        if (isEmpty()) {
            throw new IllegalStateException("Nothing is at any distance from an empty region.");
        }
        PlanBox around = path.box();
        Gap best = outers.get(0).gap(path);
        for (int i = 1; i < outers.size(); i++) {
            best = nearer(best, outers.get(i), around, path);
        }
        for (Outline hole : holes) {
            best = nearer(best, hole, around, path);
        }
        return best;
    }

    private static Gap nearer(Gap best, Outline outline, PlanBox around, Edge path) {
        return outline.box().gap(around) < best.distance() ? best.nearer(outline.gap(path)) : best;
    }

    /** This region and the other together. */
    public Region plus(Region other) {
        return plus(other, FLATNESS);
    }

    /** This region and the other together, where arcs are made straight within {@code flatness} mm. */
    public Region plus(Region other, double flatness) {
        return new Overlay(Overlay.How.PLUS, flatness).of(this, other);
    }

    /** This region without the other. */
    public Region minus(Region other) {
        return minus(other, FLATNESS);
    }

    /** This region without the other, where arcs are made straight within {@code flatness} mm. */
    public Region minus(Region other, double flatness) {
        return new Overlay(Overlay.How.MINUS, flatness).of(this, other);
    }

    /** What this region and the other have in common. */
    public Region meet(Region other) {
        return new Overlay(Overlay.How.MEET, FLATNESS).of(this, other);
    }

    public Region mapped(PlanMap map) {
        return new Region(mapped(outers, map), mapped(holes, map));
    }

    private static List<Outline> mapped(List<Outline> outlines, PlanMap map) {
        return outlines.stream().map(outline -> outline.mapped(map)).toList();
    }

    /** True for a rectangle with its sides along the axes. */
    public boolean isRectangle() {
        double whole = box.length() * box.depth();
        return !isEmpty() && Math.abs(area() - whole) <= 1e-12 * whole;
    }

    /** True where it is one piece without holes and inward corners. */
    public boolean isConvex() {
        return outers.size() == 1 && holes.isEmpty() && outers.get(0).isConvex();
    }

    /** Corners of straight pieces that hold this region. */
    public List<Point2> cornersAround() {
        return flat(FLATNESS).corners(true);
    }

    /** Corners of straight pieces within this region. */
    public List<Point2> cornersWithin() {
        return flat(FLATNESS).corners(false);
    }

    /** This region in straight pieces, kept once it was made. */
    Flat flat(double flatness) {
        Flat known = flat;
        if (known == null || known.flatness() != flatness) {
            known = new Flat(this, flatness);
            flat = known;
        }
        return known;
    }

    /** This region together with further holes that lie inside it. */
    Region withHoles(List<Outline> more) {
        List<Outline> all = new ArrayList<>(holes);
        all.addAll(more);
        return new Region(outers, all);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Region region && outers.equals(region.outers) && holes.equals(region.holes);
    }

    @Override
    public int hashCode() {
        return 31 * outers.hashCode() + holes.hashCode();
    }

    @Override
    public String toString() {
        return "Region[outers=" + outers + ", holes=" + holes + "]";
    }
}
