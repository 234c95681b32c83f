package setwright.plan.choose;

import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.plan.Rows;

/** Every arrangement that the shop owns for the part of a set-up, in the order in which the trade would think of them. */
public final class Arrangements {
    private static final List<WaysToHold> WAYS =
            List.of(new ViseWays(), new TableWays(), new PlainDevices(), new TurningDevices());

    private Arrangements() {}

    public static List<Arrangement> of(DrawnUp drawnUp, DrawnSetUp setUp, Rows rows) {
        ToHold part = new ToHold(drawnUp, setUp, rows);
        return WAYS.stream().flatMap(ways -> ways.of(part)).toList();
    }
}
