package setwright.window.desk;

import setwright.job.Job;
import setwright.job.JobRecord;
import setwright.review.Fingerprint;
import setwright.review.SignOffs;
import setwright.window.model.Planned;
import setwright.window.state.History;
import setwright.window.state.Selection;
import setwright.window.state.Typing;
import setwright.window.state.Way;

/** Goes to what is looked at, and signs. */
final class ReviewDesk implements ReviewActions {
    private final Desk desk;

    ReviewDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void place(String setUp, String operation) {
        String line = operation.isEmpty() ? Selection.HOLDING : operation;
        desk.go(desk.session()
                .with(new Selection(setUp, line))
                .with(Typing.NOTHING)
                .with(Way.PLAN));
    }

    /** The rows in use are copied first: what is signed holds wherever the job is opened. */
    @Override
    public void sign(String by) {
        desk.planned().filter(now -> now.upToDate() && !by.isBlank()).ifPresent(planned -> {
            Planned whole = new Planned(planned.whole(), planned.evaluated());
            Fingerprint fingerprint = whole.fingerprint();
            SignOffs signed = SignOffs.of(whole.job().record(), fingerprint);
            signed.next().ifPresent(sign -> {
                JobRecord.SignOff line = SignOffs.sign(sign, by.strip(), desk.now(), fingerprint);
                Job job = whole.job();
                History history = desk.session().document().history();
                desk.with(desk.settings().withPerson(by.strip()));
                desk.go(desk.session()
                        .with(history.restated(job.withRecord(job.record().signing(line)))));
            });
        });
    }
}
