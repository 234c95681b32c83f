package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.Divided;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Pattern;
import setwright.job.Size;
import setwright.quantity.Angle;
import setwright.quantity.Typed;

/** The hole features that an operation makes, in the order it names them. */
public final class Holes {
    private static final Typed<Angle> TO_THE_RIGHT = new Typed<>("0 deg", new Angle(0));

    private Holes() {}

    public static Stream<Hole> of(DrawnOperation operation, Job job) {
        List<Feature> features = job.plan().features();
        return operation.features().stream()
                .flatMap(id -> features.stream().filter(feature -> feature.id().equals(id)))
                .flatMap(feature -> hole(feature).stream());
    }

    /** What a feature asks to be drilled: itself, or holes divided round an axis as a circle of holes. */
    public static Optional<Hole> hole(Feature feature) {
        return switch (feature.kind()) {
            case HOLE -> Optional.of((Hole) feature);
            case DIVIDED -> round((Divided) feature);
            default -> Optional.empty();
        };
    }

    private static Optional<Hole> round(Divided divided) {
        Size width = divided.width();
        if (divided.what() != Divided.What.HOLES || width == null) {
            return Optional.empty();
        }
        Pattern.BoltCircle circle = new Pattern.BoltCircle(
                divided.axis().from(),
                new Pattern.Place(divided.axis().u(), divided.axis().v()),
                divided.count(),
                divided.diameter().nominal(),
                TO_THE_RIGHT);
        return Optional.of(new Hole(
                divided.id(),
                divided.note(),
                divided.side(),
                Hole.Make.PLAIN,
                width,
                null,
                null,
                divided.depth(),
                circle,
                null,
                divided.got()));
    }
}
