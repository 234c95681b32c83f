package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import setwright.geometry.plane.Moments;
import setwright.geometry.plane.Region;

/**
 * Volume in mm³ and centroid.
 *
 * @param centroid of nothing at all it is the origin
 */
public record Bulk(double volume, Point3 centroid) {
    /** The bulk of a solid; where parts of a union overlap it counts once. */
    public static Bulk of(Solid solid) {
        TreeSet<Double> levels = new TreeSet<>();
        boolean straight = true;
        for (Single part : solid.parts()) {
            levels.add(part.zLow());
            levels.add(part.zHigh());
            straight &= part.isStraight();
        }
        Integral integral = new Integral(z -> plan(solid, z).moments());
        List<Double> heights = new ArrayList<>(levels);
        for (int i = 1; i < heights.size(); i++) {
            integral.add(heights.get(i - 1), heights.get(i), straight);
        }
        return integral.bulk();
    }

    private static Region plan(Solid solid, double z) {
        return solid.parts().stream()
                .map(part -> part.core(z, z))
                .reduce(Region.NONE, (a, b) -> a.plus(b, Region.FOR_AREAS));
    }

    /**
     * The integral over height of the area of the plan and its moments: one value where the plan does not change, else
     * Simpson's rule, halved until it agrees with itself; it is exact for cones that nothing else meets, whose area is
     * quadratic in height.
     */
    static final class Integral {
        /** Of the volume of the whole band. */
        private static final double AGREES = 1e-9;

        private static final int MOST_HALVINGS = 14;

        private final Plan plan;
        private double volume;
        private double x;
        private double y;
        private double z;

        Integral(Plan plan) {
            this.plan = plan;
        }

        /** The area of the plan at a height. */
        interface Plan {
            Moments at(double z);
        }

        void add(double low, double high, boolean straight) {
            double middle = (low + high) / 2;
            Moments there = plan.at(middle);
            if (straight) {
                add(there, high - low, middle);
            } else {
                // Ends are read a hair inside, where the plan is that of this band.
                double hair = 1e-9 * (high - low);
                Band whole = new Band(low, high, plan.at(low + hair), there, plan.at(high - hair));
                halved(whole, AGREES * whole.volume(), MOST_HALVINGS);
            }
        }

        private void halved(Band whole, double agrees, int left) {
            Band lower = whole.lower(plan);
            Band upper = whole.upper(plan);
            double once = whole.volume();
            double twice = lower.volume() + upper.volume();
            if (left == 0 || Math.abs(once - twice) <= agrees) {
                lower.addTo(this);
                upper.addTo(this);
            } else {
                halved(lower, agrees, left - 1);
                halved(upper, agrees, left - 1);
            }
        }

        private void add(Moments moments, double height, double at) {
            volume += moments.area() * height;
            x += moments.x() * height;
            y += moments.y() * height;
            z += moments.area() * height * at;
        }

        Bulk bulk() {
            return new Bulk(volume, volume == 0 ? Point3.ORIGIN : new Point3(x / volume, y / volume, z / volume));
        }
    }

    /** A band with the plan at its foot, middle and top. */
    private record Band(double low, double high, Moments foot, Moments middle, Moments top) {
        double volume() {
            return (high - low) / 6 * (foot.area() + 4 * middle.area() + top.area());
        }

        Band lower(Integral.Plan plan) {
            double half = (low + high) / 2;
            return new Band(low, half, foot, plan.at((low + half) / 2), middle);
        }

        Band upper(Integral.Plan plan) {
            double half = (low + high) / 2;
            return new Band(half, high, middle, plan.at((half + high) / 2), top);
        }

        void addTo(Integral integral) {
            double sixth = (high - low) / 6;
            integral.add(foot, sixth, low);
            integral.add(middle, 4 * sixth, (low + high) / 2);
            integral.add(top, sixth, high);
        }
    }
}
