package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Keyseat;
import setwright.job.Pocket;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;

/**
 * How far a surface may be out, from the tolerance of the size that ends at it.
 *
 * @param size toleranced
 * @param walls how many surfaces of the same pass share its tolerance
 */
public record Tolerated(Size size, int walls) {
    /** Of the surfaces of some features, the tightest; empty where the drawing leaves all of them general. */
    public static Optional<Tolerated> of(Stream<Feature> features) {
        return features.flatMap(feature -> across(feature).stream())
                .filter(allowed -> allowed.size().toleranced() && allowed.out() > 0)
                .reduce((one, other) -> other.out() < one.out() ? other : one);
    }

    /** How far what is cut from above may be out, mm, either way; empty where the drawing leaves it general. */
    static Optional<Double> fromAbove(Stream<Feature> features) {
        return features.flatMap(feature -> upright(feature).stream())
                .filter(Size::toleranced)
                .map(size -> (size.greatestMm() - size.leastMm()) / 2)
                .filter(half -> half > 0)
                .min(Double::compare);
    }

    private static Optional<Size> upright(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> Optional.of(((Face) feature).across());
            case POCKET -> Optional.ofNullable(((Pocket) feature).depth());
            case SLOT -> Optional.ofNullable(((Slot) feature).depth());
            case KEYSEAT -> Optional.of(((Keyseat) feature).depth());
            default -> Optional.empty();
        };
    }

    private static List<Tolerated> across(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> List.of(new Tolerated(((Face) feature).across(), 1));
            case STEP -> List.of(new Tolerated(((Step) feature).width(), 1));
            case SLOT -> List.of(new Tolerated(((Slot) feature).width(), 2));
            case KEYSEAT -> List.of(new Tolerated(((Keyseat) feature).width(), 2));
            case POCKET ->
                List.of(new Tolerated(((Pocket) feature).length(), 2), new Tolerated(((Pocket) feature).width(), 2));
            case HOLE -> List.of(new Tolerated(((Hole) feature).size(), 2));
            case ARC_SLOT,
                    RADIUS_END,
                    PROFILE,
                    WOODRUFF_SEAT,
                    T_SLOT,
                    DOVETAIL,
                    FLATS,
                    CHAMFER,
                    SLIT,
                    INCLINED_FACE,
                    DIVIDED -> List.of();
        };
    }

    /** From the least to the greatest size, mm. */
    public double width() {
        return size.greatestMm() - size.leastMm();
    }

    /** How far each surface may be out either way, mm. */
    public double out() {
        return width() / 2 / walls;
    }
}
