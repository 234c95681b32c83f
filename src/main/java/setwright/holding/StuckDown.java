package setwright.holding;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.Adhesive;

/** What tape or glue under the whole of a flat part bears. Kernels in N and mm². */
public final class StuckDown {
    /** Tape peels from an edge: the pull is never spread evenly. */
    public static final Table BORNE = new Table(
            "what tape or glue bears",
            "area times the row's figure; of the pull straight off half, since it peels from an edge; of the area what"
                    + " is under the part",
            Unit.N,
            Source.of("common practice; the row's bands from memory"));

    private static final double EVEN = 0.5;

    private StuckDown() {}

    public static double pull(Adhesive adhesive, double area, Outlook outlook) {
        return EVEN
                * area
                * switch (outlook) {
                    case EXPECTED -> adhesive.pull().inside();
                    case PESSIMISTIC -> adhesive.pullLow().inside();
                };
    }

    public static double shear(Adhesive adhesive, double area, Outlook outlook) {
        return area
                * switch (outlook) {
                    case EXPECTED -> adhesive.shear().inside();
                    case PESSIMISTIC -> adhesive.shearLow().inside();
                };
    }
}
