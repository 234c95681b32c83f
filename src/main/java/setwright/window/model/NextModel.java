package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.window.state.Session;

/** The one thing to do next: the worst open caution, what would mend it, and accepting it. */
public final class NextModel {
    private final Planned planned;
    private final Session.Asked asked;

    private NextModel(Planned planned, Session.Asked asked) {
        this.planned = planned;
        this.asked = asked;
    }

    public static Next of(Planned planned, Session.Asked asked) {
        return new NextModel(planned, asked).next();
    }

    /** The open stops and cautions, worst first. */
    public static List<Caution> open(Findings findings) {
        return findings.judged().stream()
                .filter(Findings.Judged::open)
                .map(Findings.Judged::caution)
                .filter(caution -> caution.severity() != Severity.NOTE)
                .toList();
    }

    /** The one that is looked at, where it is still open, else the worst. */
    public static Optional<Caution> current(Findings findings, Session.Asked asked) {
        List<Caution> open = open(findings);
        return open.stream()
                .filter(caution -> caution.identity().equals(asked.caution()))
                .findFirst()
                .or(() -> open.stream().findFirst());
    }

    /** The one after it; the first follows the last. */
    public static Optional<Caution> after(Findings findings, Session.Asked asked) {
        List<Caution> open = open(findings);
        int at = current(findings, asked).map(open::indexOf).orElse(-1);
        return open.isEmpty() ? Optional.empty() : Optional.of(open.get((at + 1) % open.size()));
    }

    private Next next() {
        return current(planned.findings(), asked).map(this::of).orElseGet(this::nothingOpen);
    }

    private Next nothingOpen() {
        int unlooked = planned.findings().notChecked().size();
        String hint = unlooked == 0 ? "Ctrl+3 shows the thinnest margins" : "Ctrl+3 shows what could not be checked";
        return new Next(Badge.NONE, "", "No caution is open.", hint, Next.Page.CLOSED);
    }

    private Next of(Caution caution) {
        int others = open(planned.findings()).size() - 1;
        String more = others == 0 ? "" : "; " + others + " more after it";
        String hint = asked.open() ? "Esc closes, F4 the next" : "F4 shows what would mend it";
        return new Next(
                Badges.of(caution),
                caution.identity(),
                firstSentence(said(caution)),
                asked.open() && others == 0 ? "Esc closes" : hint + (asked.open() ? "" : more),
                asked.open() ? page(caution) : Next.Page.CLOSED);
    }

    private Next.Page page(Caution caution) {
        List<Remedy> tried = planned.evaluated().remedies().get(caution.identity());
        String rest =
                said(caution).substring(firstSentence(said(caution)).length()).strip();
        if (tried == null) {
            return new Next.Page(true, rest, List.of(), "Trying what would mend it.", accept(caution));
        }
        List<Next.Remedy> remedies = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            remedies.add(new Next.Remedy(i + 1, tried.get(i).text(), effect(tried.get(i))));
        }
        String waiting = remedies.isEmpty() ? "Nothing that was tried clears it." : "";
        return new Next.Page(true, rest, remedies, waiting, accept(caution));
    }

    private static String accept(Caution caution) {
        return caution.severity() == Severity.STOP ? "Accepted by the lead" : "Accepted by";
    }

    /** What the remedy does, and what it changes elsewhere. */
    private String effect(Remedy remedy) {
        List<String> parts = new ArrayList<>();
        parts.add("Clears it");
        if (!remedy.takesAway().isEmpty()) {
            parts.add("takes away " + names(remedy.takesAway()));
        }
        parts.add(remedy.adds().isEmpty() ? "brings nothing new" : "brings " + names(remedy.adds()));
        double time = remedy.timeEach();
        if (Math.abs(time) >= 1) {
            parts.add(Times.text(Math.abs(time), planned.printing()) + (time > 0 ? " more" : " less") + " a part");
        }
        return String.join("; ", parts);
    }

    private static String names(List<Caution> cautions) {
        return String.join(
                ", ",
                cautions.stream()
                        .map(caution -> caution.slug().replace('-', ' ') + " ("
                                + caution.severity().onScreen() + ")")
                        .distinct()
                        .toList());
    }

    private String said(Caution caution) {
        return said(planned, caution);
    }

    /** The message as it is said on the screen: the place in words, and only where there are several set-ups. */
    static String said(Planned planned, Caution caution) {
        String message = caution.message().replace(" " + caution.place().address(), "");
        boolean several = planned.plan().drawnUp().setUps().size() > 1;
        return planned.setUp(caution.setUp())
                .filter(setUp -> several)
                .map(setUp -> setUp.title() + ": " + message)
                .orElse(message);
    }

    static String firstSentence(String message) {
        int end = message.indexOf(". ");
        return end < 0 ? message : message.substring(0, end + 1);
    }
}
