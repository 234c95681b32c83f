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
        solid.parts().forEach(part -> levels.addAll(part.kinks()));
        How how = How.of(solid.parts());
        Integral integral = new Integral(z -> plan(solid, z).moments());
        List<Double> heights = new ArrayList<>(levels);
        for (int i = 1; i < heights.size(); i++) {
            integral.add(heights.get(i - 1), heights.get(i), how);
        }
        return integral.bulk();
    }

    private static Region plan(Solid solid, double z) {
        return solid.parts().stream()
                .map(part -> part.core(z, z))
                .reduce(Region.NONE, (a, b) -> a.plus(b, Region.FOR_AREAS));
    }

    /** How the area of a plan changes over a band of heights. */
    enum How {
        /** Not at all. */
        STAYS,
        /** Evenly or by its square. */
        CHANGES,
        /** As the chord of a circle: without end at its top. */
        ROUNDS;

        static How of(List<Single> solids) {
            if (solids.stream().anyMatch(solid -> solid.kind() == Solid.Kind.TURNED)) {
                return ROUNDS;
            }
            return solids.stream().allMatch(Single::isStraight) ? STAYS : CHANGES;
        }
    }

    /**
     * The integral over height of the area of the plan and its moments: one value where the plan does not change, else
     * Simpson's rule, halved until it agrees with itself; it is exact for cones that nothing else meets, whose area is
     * quadratic in height. Chords of circles are run through by the angle, in which they are smooth.
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

        void add(double low, double high, How how) {
            double middle = (low + high) / 2;
            // Ends are read a hair inside, where the plan is that of this band.
            double hair = 1e-9 * (high - low);
            switch (how) {
                case STAYS -> add(new Slice(plan.at(middle), middle), high - low);
                case CHANGES -> halved(new Band(low + hair, high - hair, this::level), 1 + 2e-9);
                case ROUNDS -> {
                    double half = (high - low) / 2 - hair;
                    halved(new Band(0, Math.PI, angle -> round(middle, half, angle)), 1 + 2e-9);
                }
            }
        }

        private Slice level(double height) {
            return new Slice(plan.at(height), height);
        }

        private Slice round(double middle, double half, double angle) {
            double height = middle - half * StrictMath.cos(angle);
            return new Slice(plan.at(height).times(half * StrictMath.sin(angle)), height);
        }

        private void halved(Band whole, double grown) {
            halved(whole, AGREES * Math.abs(whole.volume()), grown, MOST_HALVINGS);
        }

        private void halved(Band whole, double agrees, double grown, int left) {
            Band lower = whole.lower();
            Band upper = whole.upper();
            double once = whole.volume();
            double twice = lower.volume() + upper.volume();
            if (left == 0 || Math.abs(once - twice) <= agrees) {
                lower.addTo(this, grown);
                upper.addTo(this, grown);
            } else {
                halved(lower, agrees, grown, left - 1);
                halved(upper, agrees, grown, left - 1);
            }
        }

        private void add(Slice slice, double height) {
            Moments moments = slice.moments();
            volume += moments.area() * height;
            x += moments.x() * height;
            y += moments.y() * height;
            z += moments.area() * height * slice.z();
        }

        Bulk bulk() {
            return new Bulk(volume, volume == 0 ? Point3.ORIGIN : new Point3(x / volume, y / volume, z / volume));
        }
    }

    /** What a place of the run through a band counts for. */
    private record Slice(Moments moments, double z) {}

    /** The run through a band. */
    private interface Run {
        Slice at(double place);
    }

    /** A stretch of the run with its foot, middle and top. */
    private record Band(double low, double high, Run run, Slice foot, Slice middle, Slice top) {
        Band(double low, double high, Run run) {
            this(low, high, run, run.at(low), run.at((low + high) / 2), run.at(high));
        }

        double volume() {
            double areas = foot.moments().area()
                    + 4 * middle.moments().area()
                    + top.moments().area();
            return (high - low) / 6 * areas;
        }

        Band lower() {
            double half = (low + high) / 2;
            return new Band(low, half, run, foot, run.at((low + half) / 2), middle);
        }

        Band upper() {
            double half = (low + high) / 2;
            return new Band(half, high, run, middle, run.at((half + high) / 2), top);
        }

        void addTo(Integral integral, double grown) {
            double sixth = (high - low) / 6 * grown;
            integral.add(foot, sixth);
            integral.add(middle, 4 * sixth);
            integral.add(top, sixth);
        }
    }
}
