package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** The body without hollows between corners, at any attitude: a block on angle blocks, a jaw as a tilted head sees it. */
public record Polyhedron(List<Point3> corners) implements Single, Convex {
    /** In how many bands over its height the stock shows what one takes away. */
    private static final int BANDS = 12;

    public Polyhedron {
        corners = List.copyOf(corners);
        if (corners.size() < 4) {
            throw new IllegalArgumentException("A body with flat sides needs four corners at least.");
        }
    }

    /** A box after a motion. */
    public static Polyhedron of(Box box, Motion motion) {
        List<Point3> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(motion.of(new Point3(
                    (i & 1) == 0 ? box.low().x() : box.high().x(),
                    (i & 2) == 0 ? box.low().y() : box.high().y(),
                    (i & 4) == 0 ? box.low().z() : box.high().z())));
        }
        return new Polyhedron(corners);
    }

    @Override
    public Point3 furthest(Point3 way) {
        Point3 best = corners.get(0);
        double most = best.dot(way);
        for (int i = 1; i < corners.size(); i++) {
            double ahead = corners.get(i).dot(way);
            if (ahead > most) {
                most = ahead;
                best = corners.get(i);
            }
        }
        return best;
    }

    @Override
    public Box box() {
        return corners.stream().map(corner -> Box.of(corner, corner)).reduce(Box.EMPTY, Box::and);
    }

    @Override
    public double zLow() {
        return box().zLow();
    }

    @Override
    public double zHigh() {
        return box().zHigh();
    }

    @Override
    public Region shadow(double low, double high) {
        if (!heights().share(new Heights(low, high))) {
            return Region.NONE;
        }
        List<Point2> places = new ArrayList<>(section(low));
        places.addAll(section(high));
        corners.stream()
                .filter(corner -> corner.z() >= low && corner.z() <= high)
                .forEach(corner -> places.add(corner.plan()));
        return Region.around(places);
    }

    /** What is within at both heights is within at all between. */
    @Override
    public Region core(double low, double high) {
        if (!heights().hold(new Heights(low, high))) {
            return Region.NONE;
        }
        Region foot = Region.around(section(low));
        return low == high ? foot : foot.meet(Region.around(section(high)));
    }

    /** Where the lines between corners pass a height: all corners of the plan there, and some within it. */
    private List<Point2> section(double z) {
        List<Point2> places = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point3 one = corners.get(i);
            if (one.z() == z) {
                places.add(one.plan());
            }
            for (int k = 0; k < i; k++) {
                Point3 other = corners.get(k);
                if (one.z() > z != other.z() > z) {
                    places.add(one.plus(other.minus(one).times((z - one.z()) / (other.z() - one.z())))
                            .plan());
                }
            }
        }
        return places;
    }

    /** Not known, so that what is cut so counts as not gone. */
    @Override
    public @Nullable Heights column(Point2 place) {
        return null;
    }

    @Override
    public List<Double> kinks() {
        return corners.stream().map(Point3::z).sorted().distinct().toList();
    }

    @Override
    public List<Double> steps() {
        List<Double> steps = new ArrayList<>(kinks());
        for (int i = 1; i < BANDS; i++) {
            steps.add(zLow() + (zHigh() - zLow()) * i / BANDS);
        }
        steps.sort(null);
        return steps;
    }

    @Override
    public boolean isStraight() {
        return false;
    }

    @Override
    public Single moved(Motion motion) {
        return new Polyhedron(corners.stream().map(motion::of).toList());
    }

    @Override
    public boolean staysExact(Motion motion) {
        return true;
    }

    @Override
    public Kind kind() {
        return Kind.POLYHEDRON;
    }
}
