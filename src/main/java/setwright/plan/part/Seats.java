package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.DrawnHolding;
import setwright.job.DrawnVise;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.plan.Rows;
import setwright.shop.Vise;

/** Works out where the part sits on the table. */
public final class Seats {
    private Seats() {}

    /**
     * Where a block sits with a side up in a holding. The middle of the table is under the middle of the jaws along X;
     * the solid jaw stands to the column, its face at half the part's depth, so that the part's middle is over the
     * middle of the table. Empty where the holding's device is missing.
     */
    public static Optional<Heights> of(Job job, Side up, int quarterTurns, DrawnHolding holding, Rows rows) {
        return switch (holding.kind()) {
            case VISE -> inVise(job, up, quarterTurns, (DrawnVise) holding, rows);
        };
    }

    private static Optional<Heights> inVise(Job job, Side up, int quarterTurns, DrawnVise holding, Rows rows) {
        Optional<Vise> found = rows.vise(holding.vise().value());
        return found.map(vise -> {
            Lying lying = Lying.of((Block) job.plan().blank(), up, quarterTurns);
            double bed = vise.bedHeight().inside();
            double packing =
                    holding.onParallels() ? holding.parallelHeight().value().inside() : 0;
            double bottom = bed + packing;
            double half = lying.along().nominal().inside() / 2;
            double across = lying.across().nominal().inside() / 2;
            double middle = holding.offset().value().inside();
            return new Heights(
                    bed,
                    bottom,
                    bed + vise.jawHeight().inside(),
                    bottom + lying.upright().greatestMm(),
                    bottom + finished(job, up, lying.upright().greatestMm()),
                    middle - half,
                    -across,
                    middle + half,
                    across);
        });
    }

    private static double finished(Job job, Side up, double blank) {
        return job.plan().features().stream()
                .filter(feature -> feature.side() == up && feature.kind() == Feature.Kind.FACE)
                .mapToDouble(feature -> ((Face) feature).across().nominal().inside())
                .min()
                .orElse(blank);
    }
}
