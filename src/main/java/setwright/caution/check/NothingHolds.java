package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.HoldingEdits;
import setwright.plan.Plan;

/** The part lies on the table, or on a device that does not grip by itself, and no strap is on it. */
public final class NothingHolds implements Check {
    @Override
    public String slug() {
        return "nothing-holds-it";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .filter(setUp -> !setUp.operations().isEmpty() && wantsStraps(setUp.holding()))
                .map(setUp -> look(plan, setUp))
                .toList();
    }

    private static boolean wantsStraps(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> false;
            case TABLE -> true;
            case DEVICE ->
                switch (((DrawnDevice) holding).fastening().value()) {
                    case STRAPS, BOLTS -> true;
                    case TAPE, GLUE, SANDWICH, CHUCK, COLLET, MANDREL, BETWEEN_CENTRES, MAGNET -> false;
                };
        };
    }

    private Finding look(Plan plan, DrawnSetUp setUp) {
        if (!HoldingEdits.straps(setUp.holding()).isEmpty()) {
            return Finding.HOLDS;
        }
        Caution.Place place = Caution.Place.ofSetUp(setUp.id(), "straps", "part");
        return Finding.fails(
                place,
                slug(),
                Severity.STOP,
                "Nothing holds the part on the " + under(plan, setUp.holding()) + " " + place.address()
                        + ": no strap is on it, and none found a place. The first cut throws it: take straps at places"
                        + " of your own, or something larger to lie on.");
    }

    private static String under(Plan plan, DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE, TABLE -> "table";
            case DEVICE -> new Words(plan).row(((DrawnDevice) holding).device().value());
        };
    }
}
