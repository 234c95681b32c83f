package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;

/** How deep a path runs inside a region. */
final class Depth {
    private static final double SAME_PLACE = 1e-9;

    private final Region region;
    private final Edge path;

    Depth(Region region, Edge path) {
        this.region = region;
        this.path = path;
    }

    /** The depth of a path that lies inside as a whole; {@code line} is its distance from the region's outlines. */
    Gap of(Gap line) {
        return path.from().at(path.to()) ? line.inside() : deepest(0, 1);
    }

    /** The depth of a path that meets the outlines of the region, or {@code line} where it only touches. */
    Gap whereItCrosses(Gap line) {
        List<Double> cuts = cuts();
        Gap best = line;
        for (int i = 1; i < cuts.size(); i++) {
            double low = cuts.get(i - 1);
            double high = cuts.get(i);
            if (high - low > SAME_PLACE && region.contains(path.at((low + high) / 2))) {
                best = best.nearer(deepest(low, high));
            }
        }
        return best;
    }

    /** Where the path may pass from outside to inside, in order, both ends included. */
    private List<Double> cuts() {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        region.outlines().forEach(outline -> {
            for (Edge edge : outline.edges()) {
                for (Point2 place : Nearer.meetings(path, edge)) {
                    cuts.add(path.fraction(place));
                }
            }
        });
        cuts.sort(null);
        return cuts;
    }

    private Gap deepest(double low, double high) {
        double middle = GoldenSection.greatest(fraction -> at(fraction).distance(), low, high);
        Gap best = at(middle);
        for (double end : new double[] {low, high}) {
            Gap gap = at(end);
            best = gap.distance() > best.distance() ? gap : best;
        }
        return best.inside();
    }

    private Gap at(double fraction) {
        return region.lineGap(Straight.point(path.at(fraction)));
    }
}
