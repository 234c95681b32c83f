package setwright.window.desk;

import java.util.Optional;
import setwright.job.Job;
import setwright.job.JobRecord;
import setwright.window.model.Walk;
import setwright.window.model.WalkModel;
import setwright.window.state.Session;

/** Turns the pages of the walk through and records what was done. */
final class WalkDesk implements WalkActions {
    private final Desk desk;

    WalkDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void done(String by) {
        model().ifPresent(model -> {
            Walk page = model.page(desk.session().step());
            if (page.holds() && by.isBlank()) {
                return;
            }
            model.id(page.number()).ifPresent(step -> tick(step, by, page.number() + 1));
        });
    }

    private void tick(String step, String by, int next) {
        Job job = desk.session().job();
        String who = by.isBlank() ? desk.settings().person() : by.strip();
        JobRecord record = job.record().ticking(new JobRecord.Tick(step, WalkModel.PART, who, desk.now()));
        Session session = desk.session();
        desk.go(session.with(session.document().history().recorded(record)).at(next));
    }

    @Override
    public void back() {
        turn(-1);
    }

    @Override
    public void on() {
        turn(1);
    }

    private void turn(int by) {
        model().ifPresent(model -> {
            int number = model.page(desk.session().step()).number() + by;
            desk.go(desk.session().at(Math.max(1, number)));
        });
    }

    private Optional<WalkModel> model() {
        return desk.planned().map(WalkModel::new);
    }
}
