package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import setwright.job.Added;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Job;
import setwright.job.RouteEdits;
import setwright.job.SquaringUp;
import setwright.shop.Stop;
import setwright.window.model.Planned;
import setwright.window.model.StillAsked;
import setwright.window.state.Selection;
import setwright.window.state.Typing;

/** Changes the route. */
final class RouteDesk implements RouteActions {
    private final Desk desk;

    RouteDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void choose(String setUp) {
        desk.go(desk.session().with(new Selection(setUp, "")).with(Typing.NOTHING));
    }

    @Override
    public void add(String setUp) {
        at(setUp).ifPresent(planned -> {
            Added added = RouteEdits.added(planned.drawnUp(), setUp);
            desk.step("A set-up added behind " + name(planned, setUp), added.job(), new Selection(added.id(), ""));
        });
    }

    @Override
    public void duplicate(String setUp) {
        at(setUp).ifPresent(planned -> {
            Added added = RouteEdits.duplicated(planned.drawnUp(), setUp);
            desk.step(name(planned, setUp) + " duplicated", added.job(), new Selection(added.id(), ""));
        });
    }

    @Override
    public void delete(String setUp) {
        at(setUp).ifPresent(planned -> {
            Job without = RouteEdits.deleted(planned.drawnUp(), setUp);
            List<DrawnOperation> gone =
                    planned.drawnUp().setUp(setUp).map(DrawnSetUp::operations).orElse(List.of());
            String neighbour = neighbour(planned, setUp);
            desk.step(name(planned, setUp) + " deleted", without, new Selection(neighbour, ""));
            desk.say(StillAsked.said(planned, without, gone));
        });
    }

    @Override
    public void move(String setUp, int by) {
        at(setUp)
                .ifPresent(planned -> desk.step(
                        name(planned, setUp) + (by < 0 ? " earlier" : " later"),
                        RouteEdits.moved(planned.drawnUp(), setUp, by),
                        desk.session().selection()));
    }

    @Override
    public void squareUp() {
        desk.planned().ifPresent(planned -> {
            Optional<String> stop = planned.plan().rows().all(Stop.class).stream()
                    .filter(row -> row.form() == Stop.Form.VISE && row.kept().owned() != 0)
                    .map(Stop::id)
                    .findFirst();
            Job before = planned.job();
            Job squared = SquaringUp.of(planned.drawnUp(), stop);
            if (squared.equals(before)) {
                desk.say(
                        SquaringUp.suits(before.plan().blank())
                                ? "Every side is clean already, or cut in a set-up that is written down."
                                : "Squaring up wants a blank with six flat sides.");
            } else {
                String first = squared.plan().setUps().get(0).id();
                desk.step("Blank squared up", squared, new Selection(first, ""));
            }
        });
    }

    private Optional<Planned> at(String setUp) {
        return desk.planned().filter(planned -> planned.drawnUp().setUp(setUp).isPresent());
    }

    private static String name(Planned planned, String setUp) {
        return planned.drawnUp().setUp(setUp).map(DrawnSetUp::title).orElse(setUp);
    }

    /** The one before it, else the one behind it. */
    private static String neighbour(Planned planned, String setUp) {
        List<String> ids =
                planned.drawnUp().setUps().stream().map(DrawnSetUp::id).toList();
        int at = ids.indexOf(setUp);
        return at > 0 ? ids.get(at - 1) : ids.size() > 1 ? ids.get(1) : "";
    }
}
