package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import setwright.caution.Acceptances;
import setwright.caution.Caution;
import setwright.caution.Page;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.job.Job;
import setwright.job.JobRecord.Role;
import setwright.window.model.NextModel;
import setwright.window.model.Planned;
import setwright.window.state.Notice;
import setwright.window.state.Selection;
import setwright.window.state.Session;
import setwright.window.state.Session.Asked;
import setwright.window.state.Typing;

/** What is done about the next caution. */
final class NextDesk implements NextActions {
    private final Desk desk;

    NextDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void open() {
        Asked asked = desk.session().asked();
        desk.planned()
                .flatMap(planned -> asked.open()
                        ? NextModel.after(planned.findings(), asked)
                        : NextModel.current(planned.findings(), asked))
                .ifPresent(caution -> desk.go(
                        at(caution).with(new Asked(caution.identity(), true)).with(Typing.NOTHING)));
    }

    @Override
    public Optional<Notice> explanation() {
        return desk.currentCaution()
                .flatMap(caution -> Page.of(caution.slug()))
                .map(page -> new Notice(
                        page.title(),
                        page.sections().stream()
                                .map(section -> section.heading().words() + ": " + section.text())
                                .toList()));
    }

    /** Goes to where the caution is, so that card and bench show it. */
    private Session at(Caution caution) {
        if (caution.setUp().isEmpty()) {
            return desk.session();
        }
        String line = caution.operation().isEmpty() ? Selection.HOLDING : caution.operation();
        return desk.session().with(new Selection(caution.setUp(), line));
    }

    @Override
    public void close() {
        desk.go(desk.session().with(Asked.NOTHING));
    }

    @Override
    public void take(int remedy) {
        desk.planned()
                .filter(Planned::upToDate)
                .ifPresent(planned -> desk.currentCaution().ifPresent(caution -> {
                    List<Remedy> tried = planned.evaluated().remedies().getOrDefault(caution.identity(), List.of());
                    if (remedy <= tried.size()) {
                        take(tried.get(remedy - 1));
                    }
                }));
    }

    private void take(Remedy remedy) {
        Session closed = desk.session().with(Asked.NOTHING);
        desk.go(closed.with(closed.document().history().closed().step(name(remedy), "", remedy.changed())));
    }

    private static String name(Remedy remedy) {
        return remedy.text().replaceFirst("\\.$", "");
    }

    @Override
    public void accept(String by, String reason) {
        desk.currentCaution().ifPresent(caution -> {
            Role role = caution.severity() == Severity.STOP ? Role.LEAD : Role.MACHINIST;
            Job job = desk.session().job();
            Job accepted =
                    job.withRecord(job.record().accepting(Acceptances.of(caution, role, by, reason, desk.now())));
            desk.with(desk.settings().withPerson(by));
            Session closed = desk.session().with(Asked.NOTHING);
            desk.go(closed.with(closed.document().history().recorded(accepted.record())));
        });
    }
}
