package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import setwright.geometry.Prism;
import setwright.geometry.Stock;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Region;

/** Parts the stock into what hangs together. */
final class Pieces {
    /** Chips and slivers are no pieces, mm³. */
    private static final double LEAST = 5;

    private static final double SAME = 1e-6;

    private Pieces() {}

    /** The largest first. */
    static List<Piece> of(Stock stock) {
        List<List<Prism>> groups = new ArrayList<>();
        for (Prism layer : stock.layers()) {
            List<List<Prism>> next = new ArrayList<>(groups);
            for (Prism part : parts(layer)) {
                List<List<Prism>> joined = next.stream()
                        .filter(group -> group.stream().anyMatch(below -> touches(below, part)))
                        .toList();
                List<Prism> merged = new ArrayList<>();
                joined.forEach(merged::addAll);
                merged.add(part);
                next.removeIf(group -> joined.stream().anyMatch(other -> other == group));
                next.add(merged);
            }
            groups = next;
        }
        return groups.stream()
                .map(Piece::new)
                .filter(piece -> piece.volume() > LEAST)
                .sorted(Comparator.comparingDouble((Piece piece) -> -piece.volume()))
                .toList();
    }

    private static boolean touches(Prism below, Prism part) {
        return Math.abs(below.zHigh() - part.zLow()) < SAME
                && below.region().box().gap(part.region().box()) <= 0
                && below.region().meet(part.region()).area() > SAME;
    }

    /** The separate areas of a layer, each with its holes. */
    private static List<Prism> parts(Prism layer) {
        Region region = layer.region();
        if (region.outers().size() == 1) {
            return List.of(layer);
        }
        List<Prism> found = new ArrayList<>();
        for (Outline outer : region.outers()) {
            List<Outline> holes = region.holes().stream()
                    .filter(hole -> outer.contains(hole.edges().get(0).at(0.5)))
                    .toList();
            found.add(new Prism(new Region(List.of(outer), holes), layer.zLow(), layer.zHigh()));
        }
        return found;
    }
}
