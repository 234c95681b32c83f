package setwright.window.model;

import java.util.List;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.time.TimePlan;
import setwright.window.state.Selection;

/** The route: one card a set-up, in working order. */
public final class RouteModel {
    private RouteModel() {}

    public static List<RouteCard> of(Planned planned, Selection at) {
        List<DrawnSetUp> setUps = planned.plan().drawnUp().setUps();
        return setUps.stream()
                .map(setUp -> new RouteCard(
                        setUp.id(),
                        setUps.indexOf(setUp) + 1 + "  " + setUp.title(),
                        HoldingWords.brief(planned, setUp),
                        Times.text(time(planned, setUp), planned.printing()) + " a part",
                        Badges.of(planned.findings(), caution -> caution.setUp().equals(setUp.id())),
                        setUp.id().equals(at.setUp())))
                .toList();
    }

    private static double time(Planned planned, DrawnSetUp setUp) {
        return setUp.operations().stream()
                .map(DrawnOperation::id)
                .flatMap(id -> planned.plan().time().operation(id).stream())
                .mapToDouble(TimePlan.OperationTime::whole)
                .sum();
    }
}
