package setwright.plan.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.Divided;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Feature;
import setwright.job.Tooth;
import setwright.plan.Rows;

/** Works the position tables out. */
public final class Indexes {
    private Indexes() {}

    public static IndexPlan of(DrawnUp drawnUp, Rows rows) {
        List<FeatureIndex> tables = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            if (setUp.holding().kind() == DrawnHolding.Kind.DEVICE) {
                DrawnDevice holding = (DrawnDevice) setUp.holding();
                rows.job().plan().features().stream()
                        .filter(feature -> feature.kind() == Feature.Kind.DIVIDED)
                        .map(Divided.class::cast)
                        .forEach(divided -> table(setUp, holding, divided, rows).ifPresent(tables::add));
            }
        }
        return new IndexPlan(tables);
    }

    private static Optional<FeatureIndex> table(DrawnSetUp setUp, DrawnDevice holding, Divided divided, Rows rows) {
        Optional<DrawnOperation> cuts = setUp.operations().stream()
                .filter(operation -> operation.features().contains(divided.id()))
                .findFirst();
        return cuts.flatMap(operation -> new Devices(rows)
                .way(holding, divided.count())
                .map(way -> new FeatureIndex(
                        setUp.id(),
                        operation.id(),
                        divided.id(),
                        way.how(),
                        way.scale(),
                        way.positions(),
                        gear(divided).orElse(null))));
    }

    private static Optional<GearCheck> gear(Divided divided) {
        Tooth tooth = divided.tooth();
        return divided.what() == Divided.What.TEETH && tooth != null ? GearCheck.of(divided, tooth) : Optional.empty();
    }
}
