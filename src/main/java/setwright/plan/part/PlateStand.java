package setwright.plan.part;

import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.shop.FixturePlate;

/** Where a fixture plate stands: bolted to the table, or in a vise with its face just over the jaws. */
final class PlateStand {
    /** A plate in a vise stands so far over the jaws, on parallels where it is thin (common practice), mm. */
    private static final double OVER_JAWS = 3;

    private PlateStand() {}

    /** Height of its face over the table. */
    static double top(FixturePlate plate, DrawnDevice holding, Rows rows) {
        double thick = plate.thickness().inside();
        return rows.vise(holding.vise().value())
                .map(vise -> vise.bedHeight().inside()
                        + Math.max(thick, vise.jawHeight().inside() + OVER_JAWS))
                .orElse(thick);
    }
}
