package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.window.state.Document;
import setwright.window.state.Notice;
import setwright.window.state.Session;
import setwright.window.state.Settings;
import setwright.window.state.Way;

/** Puts the screen together from the state and what was worked out. */
public final class ScreenModel {
    private final Session session;
    private final Settings settings;
    private final Notice notice;

    public ScreenModel(Session session, Settings settings, Notice notice) {
        this.session = session;
        this.settings = settings;
        this.notice = notice;
    }

    /**
     * What is said beside the plan.
     *
     * @param failure why the job could not be worked out; empty where it could
     * @param working what the background is at; empty while it rests
     */
    public record Said(String failure, String working, Next.Foot foot) {}

    public Screen screen(Optional<Planned> planned, Said said) {
        Next nothing = new Next(Badge.NONE, "", "", "", Next.Page.CLOSED);
        return new Screen(
                title(session.document()),
                session.way(),
                head(planned, said.failure, said.working),
                planned.map(now -> RouteModel.of(now, session.selection())).orElse(List.of()),
                planned.map(now -> CardModel.of(now, session)).orElse(Card.EMPTY),
                planned.map(now -> NextModel.of(now, session.asked()))
                        .orElse(nothing)
                        .saying(said.foot),
                planned.filter(now -> session.way() == Way.WALK_THROUGH)
                        .map(now -> new WalkModel(now).page(session.step()))
                        .orElse(Walk.EMPTY),
                planned.filter(now -> session.way() == Way.REVIEW)
                        .map(ReviewModel::of)
                        .orElse(Review.EMPTY),
                session.selection(),
                planned.map(Planned::plan),
                notice,
                session.document().history().undoStep().orElse(""),
                session.document().history().redoStep().orElse(""),
                settings.person(),
                Quick.CLOSED,
                EntryPage.CLOSED,
                BenchPage.CLOSED,
                RankingPage.CLOSED,
                Optional.empty());
    }

    private static Head head(Optional<Planned> planned, String failure, String working) {
        if (!failure.isEmpty()) {
            return HeadText.unworked("This could not be worked out: " + failure, working);
        }
        return planned.map(now -> HeadText.of(now.findings(), working))
                .orElseGet(() -> HeadText.unworked("Working it out.", ""));
    }

    /** The part, the file, and a star while there is something to save. */
    private static String title(Document document) {
        String part = document.job().plan().title().part();
        return part + " - " + document.name() + (document.unsaved() ? " *" : "") + " - Setwright";
    }
}
