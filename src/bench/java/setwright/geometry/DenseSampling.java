package setwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** What exact clearance stands against: points 1 mm apart round every section of the tool, each 1 mm of its way. */
final class DenseSampling {
    private DenseSampling() {}

    /** The least distance of a point of the tool from the box of a body: less work than a real sampling would have. */
    static double least(ManyOperations set) {
        double sum = 0;
        List<Box> boxes = set.bodies.stream().map(body -> body.solid().box()).toList();
        for (ManyOperations.One one : set.operations) {
            double least = Clearance.REACH;
            List<double[]> points = points(one.tool());
            for (Move move : one.path().moves()) {
                int steps = (int) Math.ceil(move.length());
                for (int i = 0; i <= steps; i++) {
                    least = Math.min(least, least(points, move.at((double) i / Math.max(1, steps)), boxes));
                }
            }
            sum += least;
        }
        return sum;
    }

    private static double least(List<double[]> points, Point3 tip, List<Box> boxes) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] p : points) {
            for (Box box : boxes) {
                least = Math.min(least, squared(box, p[0] + tip.x(), p[1] + tip.y(), p[2] + tip.z()));
            }
        }
        return Math.sqrt(least);
    }

    private static double squared(Box box, double x, double y, double z) {
        double dx = Math.max(0, Math.max(box.plan().xLow() - x, x - box.plan().xHigh()));
        double dy = Math.max(0, Math.max(box.plan().yLow() - y, y - box.plan().yHigh()));
        double dz = Math.max(0, Math.max(box.zLow() - z, z - box.zHigh()));
        return dx * dx + dy * dy + dz * dz;
    }

    private static List<double[]> points(ToolStack tool) {
        List<double[]> points = new ArrayList<>();
        for (Section section : tool.sections()) {
            Profile profile = section.profile();
            for (double z = profile.zLow(); z <= profile.zHigh(); z++) {
                double radius = profile.radiusAt(z);
                int count = (int) Math.ceil(2 * Math.PI * radius);
                for (int k = 0; k < count; k++) {
                    double angle = 2 * Math.PI * k / count;
                    points.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle), z});
                }
            }
        }
        return points;
    }
}
