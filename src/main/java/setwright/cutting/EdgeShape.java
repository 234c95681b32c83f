package setwright.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The line of a cutting edge as it turns: at which radius it cuts at every height over the tip. Cut into short straight
 * parts, each as long as the edge there. Lengths in mm, angles in rad.
 */
public sealed interface EdgeShape {
    /** The parts from the tip up to a height. */
    List<Part> parts(double depth);

    /** The largest radius up to a height. */
    double widest(double depth);

    Kind kind();

    /**
     * A short straight part.
     *
     * @param bottom height of its lower end over the tip
     * @param height from its lower to its upper end
     * @param radius at its middle
     * @param lead from the axis to it; positive where it leans outward as it rises
     */
    record Part(double bottom, double height, double radius, double lead) {}

    /** The kinds of shape. */
    enum Kind {
        STRAIGHT,
        CONICAL,
        ROUNDED,
        HOLLOW,
        FLANKED
    }

    /** Parts of a straight slanted edge. */
    int SLANTED = 6;

    /** An edge that lies flatter counts as this steep, rad. */
    double STEEPEST = StrictMath.toRadians(89);

    /** Parts of a quarter circle. */
    int QUARTER = 12;

    /** A cylinder. */
    record Straight(double radius) implements EdgeShape {
        @Override
        public List<Part> parts(double depth) {
            return List.of(new Part(0, depth, radius, 0));
        }

        @Override
        public double widest(double depth) {
            return radius;
        }

        @Override
        public Kind kind() {
            return Kind.STRAIGHT;
        }
    }

    /**
     * A cone: a chamfer mill, or a dovetail cutter with a negative lead.
     *
     * @param tipRadius at the tip
     * @param lead from the axis to the edge
     */
    record Conical(double tipRadius, double lead) implements EdgeShape {
        @Override
        public List<Part> parts(double depth) {
            List<Part> found = new ArrayList<>();
            double height = depth / SLANTED;
            for (int i = 0; i < SLANTED; i++) {
                found.add(new Part(i * height, height, radius((i + 0.5) * height), lead));
            }
            return found;
        }

        private double radius(double height) {
            return tipRadius + height * StrictMath.tan(lead);
        }

        @Override
        public double widest(double depth) {
            return Math.max(tipRadius, radius(depth));
        }

        @Override
        public Kind kind() {
            return Kind.CONICAL;
        }
    }

    /**
     * A cylinder with a rounded corner at its tip: a ball where the corner is as large as the radius.
     *
     * @param radius of the cylinder
     * @param corner radius of the corner
     */
    record Rounded(double radius, double corner) implements EdgeShape {
        @Override
        public List<Part> parts(double depth) {
            double round = Math.min(depth, corner);
            List<Part> found = new ArrayList<>();
            double last = Math.PI / 2 - StrictMath.acos(1 - round / corner);
            int count = (int) Math.ceil(QUARTER * (1 - last / (Math.PI / 2)) - 1e-9);
            for (int i = 0; i < count; i++) {
                double low = lead(i, count, last);
                double high = lead(i + 1, count, last);
                found.add(arc(low, high));
            }
            if (depth > corner) {
                found.add(new Part(corner, depth - corner, radius, 0));
            }
            return found;
        }

        private static double lead(int i, int count, double last) {
            return Math.PI / 2 + (last - Math.PI / 2) * i / count;
        }

        private Part arc(double low, double high) {
            double middle = (low + high) / 2;
            double bottom = corner * (1 - StrictMath.sin(low));
            double height = corner * (StrictMath.sin(low) - StrictMath.sin(high));
            return new Part(
                    bottom, height, radius - corner + corner * StrictMath.cos(middle), Math.min(middle, STEEPEST));
        }

        @Override
        public double widest(double depth) {
            double left = Math.max(0, corner - depth);
            return radius - corner + Math.sqrt(corner * corner - left * left);
        }

        @Override
        public Kind kind() {
            return Kind.ROUNDED;
        }
    }

    /**
     * A hollow quarter circle: leaves a rounded edge on the work.
     *
     * @param tipRadius of the cutter at its tip
     * @param hollow radius that it leaves
     */
    record Hollow(double tipRadius, double hollow) implements EdgeShape {
        @Override
        public List<Part> parts(double depth) {
            double last = StrictMath.asin(Math.min(1, depth / hollow));
            List<Part> found = new ArrayList<>();
            for (int i = 0; i < QUARTER; i++) {
                double low = last * i / QUARTER;
                double high = last * (i + 1) / QUARTER;
                double bottom = hollow * StrictMath.sin(low);
                double height = hollow * StrictMath.sin(high) - bottom;
                found.add(new Part(bottom, height, radius((low + high) / 2), (low + high) / 2));
            }
            return found;
        }

        private double radius(double lead) {
            return tipRadius + hollow * (1 - StrictMath.cos(lead));
        }

        @Override
        public double widest(double depth) {
            return radius(StrictMath.asin(Math.min(1, depth / hollow)));
        }

        @Override
        public Kind kind() {
            return Kind.HOLLOW;
        }
    }

    /**
     * A disc with a flat rim between two flanks, as a gear cutter counts here.
     *
     * @param radius of the rim
     * @param rim width of it
     * @param flank from the radius to a flank
     */
    record Flanked(double radius, double rim, double flank) implements EdgeShape {
        @Override
        public List<Part> parts(double depth) {
            double side = Math.max(0, (depth - rim) / 2);
            List<Part> found = new ArrayList<>();
            double height = side / SLANTED;
            double lead = Math.PI / 2 - flank;
            for (int i = 0; i < SLANTED && side > 0; i++) {
                double in = (SLANTED - i - 0.5) * height / StrictMath.tan(flank);
                found.add(new Part(i * height, height, radius - in, lead));
                found.add(new Part(depth - (i + 1) * height, height, radius - in, -lead));
            }
            found.add(new Part(side, depth - 2 * side, radius, 0));
            return found;
        }

        @Override
        public double widest(double depth) {
            return radius;
        }

        @Override
        public Kind kind() {
            return Kind.FLANKED;
        }
    }
}
