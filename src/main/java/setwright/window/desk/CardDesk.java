package setwright.window.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.Edits;
import setwright.quantity.Unreadable;
import setwright.window.model.CardPlaces;
import setwright.window.model.Nudge;
import setwright.window.model.Planned;
import setwright.window.state.Selection;
import setwright.window.state.Session;
import setwright.window.state.Typing;

/** What is done on a card. */
final class CardDesk implements CardActions {
    private final Desk desk;

    CardDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void choose(String line) {
        Session session = desk.session();
        Selection at = session.selection();
        String chosen = at.line().equals(line) ? "" : line;
        desk.go(closed(session).with(at.withLine(chosen)));
    }

    @Override
    public void typed(String field, String text) {
        places().ifPresent(places -> {
            String at = desk.session().selection().line() + "/" + field;
            if (text.isBlank()) {
                desk.go(desk.session().with(new Typing(at, text, "")));
                return;
            }
            try {
                CardPlaces.Change change = places.type(field, text);
                Session typing = desk.session().with(new Typing(at, text, ""));
                desk.go(typing.with(typing.document().history().step(change.step(), at, change.job())));
            } catch (Unreadable why) {
                Session without = withdrawn(desk.session(), at);
                desk.go(without.with(new Typing(at, text, String.valueOf(why.getMessage()))));
            }
        });
    }

    @Override
    public void nudge(String field, int steps) {
        desk.screen().card().unfolded().fields().stream()
                .flatMap(List::stream)
                .filter(each -> each.key().equals(field))
                .findFirst()
                .ifPresent(shown -> typed(field, Nudge.text(shown.text(), steps)));
    }

    @Override
    public void ink(String field) {
        Typing typing = desk.session().typing();
        boolean here = typing.in(desk.session().selection().line(), field);
        if (here && !typing.complaint().isEmpty()) {
            return;
        }
        if (here && typing.text().isBlank()) {
            pencil(field);
            return;
        }
        desk.go(closed(desk.session()));
        places().flatMap(places -> places.ink(field)).ifPresent(change -> desk.step(change.step(), "", change.job()));
    }

    @Override
    public void pencil(String field) {
        desk.go(closed(desk.session()));
        places().flatMap(places -> places.pencil(field))
                .ifPresent(change -> desk.step(change.step(), "", change.job()));
    }

    @Override
    public void back(String field) {
        Session session = desk.session();
        String line = session.selection().line();
        if (session.typing().in(line, field)) {
            desk.go(withdrawn(session, line + "/" + field).with(Typing.NOTHING));
        } else {
            choose(line);
        }
    }

    @Override
    public void left(String field) {
        if (desk.session().typing().in(desk.session().selection().line(), field)) {
            desk.go(closed(desk.session()));
        }
    }

    @Override
    public void open(String figure) {
        List<String> open = new ArrayList<>(desk.session().openFigures());
        if (!open.remove(figure)) {
            open.add(figure);
        }
        desk.go(desk.session().withOpenFigures(open));
    }

    @Override
    public void inkAll() {
        String line = desk.session().selection().line();
        desk.planned()
                .filter(planned -> planned.operation(line).isPresent())
                .ifPresent(planned -> desk.step(
                        "All of " + planned.brief(line) + " inked", "", Edits.inkAll(planned.drawnUp(), line)));
    }

    private Optional<CardPlaces> places() {
        Optional<Planned> planned = desk.planned();
        return planned.map(now -> new CardPlaces(now, desk.session().selection()));
    }

    private static Session withdrawn(Session session, String at) {
        return session.with(session.document().history().withdrawn(at));
    }

    private static Session closed(Session session) {
        return session.with(Typing.NOTHING).with(session.document().history().closed());
    }
}
