package setwright.caution.check;

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
record Allowed(Size size, int walls) {
    /** Of the surfaces that an operation leaves, the tightest; empty where the drawing leaves all of them general. */
    static Optional<Allowed> of(Operations.In in) {
        return features(in)
                .flatMap(feature -> across(feature).stream())
                .filter(allowed -> allowed.size().toleranced() && allowed.out() > 0)
                .reduce((one, other) -> other.out() < one.out() ? other : one);
    }

    static Stream<Feature> features(Operations.In in) {
        return in.plan().job().plan().features().stream()
                .filter(feature -> in.operation().features().contains(feature.id()));
    }

    private static List<Allowed> across(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> List.of(new Allowed(((Face) feature).across(), 1));
            case STEP -> List.of(new Allowed(((Step) feature).width(), 1));
            case SLOT -> List.of(new Allowed(((Slot) feature).width(), 2));
            case KEYSEAT -> List.of(new Allowed(((Keyseat) feature).width(), 2));
            case POCKET ->
                List.of(new Allowed(((Pocket) feature).length(), 2), new Allowed(((Pocket) feature).width(), 2));
            case HOLE -> List.of(new Allowed(((Hole) feature).size(), 2));
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
    double width() {
        return size.greatestMm() - size.leastMm();
    }

    /** How far each surface may be out either way, mm. */
    double out() {
        return width() / 2 / walls;
    }
}
