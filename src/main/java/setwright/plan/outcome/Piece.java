package setwright.plan.outcome;

import java.util.List;
import setwright.geometry.Box;
import setwright.geometry.Prism;
import setwright.geometry.plane.Point2;

/** Material that hangs together, in layers. */
public record Piece(List<Prism> layers) {
    public Piece {
        layers = List.copyOf(layers);
    }

    /** mm³; the layers show no less than there is. */
    public double volume() {
        return layers.stream()
                .mapToDouble(layer -> layer.region().area() * (layer.zHigh() - layer.zLow()))
                .sum();
    }

    public Box box() {
        return layers.stream().map(Prism::box).reduce(Box.EMPTY, Box::and);
    }

    /** Whether there is material of it over or under a place. */
    boolean under(Point2 place) {
        return layers.stream().anyMatch(layer -> layer.region().contains(place));
    }

    /** Whether it reaches from one Y to another somewhere between two heights. */
    boolean spans(double front, double back, double low, double high) {
        return layers.stream()
                .filter(layer -> layer.zHigh() > low && layer.zLow() < high)
                .anyMatch(layer -> layer.region().box().yLow() <= front
                        && layer.region().box().yHigh() >= back);
    }
}
