package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.Hole;
import setwright.job.Pocket;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.plan.Plan;
import setwright.quantity.Measure;

/** The part is measured warm from the cut, and its growth eats the tolerance. */
public final class Thermal implements Check {
    /** How much warmer than its gauge a part comes off the machine, K (common practice: warm to the hand). */
    private static final double WARMER = 10;

    /** What growth may take of a tolerance (common practice). */
    private static final double SHARE = 0.25;

    @Override
    public String slug() {
        return "thermal";
    }

    /** A toleranced size and what it is of. */
    private record Toleranced(Feature feature, Size size) {}

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            plan.job().plan().features().stream()
                    .filter(feature -> feature.side() == setUp.up().value())
                    .flatMap(feature -> size(feature).stream().map(size -> new Toleranced(feature, size)))
                    .filter(one -> one.size().toleranced())
                    .forEach(one -> found.add(look(plan, setUp, one)));
        }
        return found;
    }

    /** The size that warmth changes most; none where the feature has no length of its own. */
    private static Optional<Size> size(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> Optional.of(((Face) feature).across());
            case HOLE -> Optional.of(((Hole) feature).size());
            case STEP -> Optional.of(((Step) feature).width());
            case SLOT -> Optional.of(((Slot) feature).width());
            case POCKET -> Optional.of(((Pocket) feature).length());
            case FLATS -> Optional.of(((Flats) feature).across());
            case ARC_SLOT,
                    RADIUS_END,
                    PROFILE,
                    KEYSEAT,
                    WOODRUFF_SEAT,
                    T_SLOT,
                    DOVETAIL,
                    CHAMFER,
                    SLIT,
                    INCLINED_FACE,
                    DIVIDED -> Optional.empty();
        };
    }

    private Finding look(Plan plan, DrawnSetUp setUp, Toleranced one) {
        double growth = setwright.location.Thermal.growth(
                plan.rows().material().expansion().inside(),
                one.size().nominal().inside(),
                WARMER);
        double tolerance = one.size().greatestMm() - one.size().leastMm();
        if (growth <= SHARE * tolerance) {
            return Finding.HOLDS;
        }
        Words words = new Words(plan);
        Caution.Place place = Caution.Place.ofSetUp(setUp.id(), one.feature().id(), Words.called(one.feature()));
        return Finding.fails(
                place,
                slug(),
                Severity.NOTE,
                Words.sentence(Words.called(one.feature())) + " grows " + words.fine(growth) + " when the part is "
                        + words.printing().of(Measure.TEMPERATURE_STEP, WARMER) + " warm " + place.address() + "; "
                        + words.fine(SHARE * tolerance)
                        + " is asked, a quarter of its tolerance: take the measure when it is cold.");
    }
}
