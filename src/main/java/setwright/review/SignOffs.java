package setwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.job.JobRecord;
import setwright.job.JobRecord.Sign;
import setwright.job.JobRecord.SignOff;

/** What is signed, and whether it still fits the plan; one state for every kind of signature, in their order. */
public record SignOffs(List<State> states) {
    public SignOffs {
        states = List.copyOf(states);
    }

    /** How a signature stands to the plan. */
    public enum Fit {
        UNSIGNED,
        FITS,
        CHANGED
    }

    /**
     * One kind of signature.
     *
     * @param last the latest name under it; null where there is none
     * @param changed what is no longer as it was when it was signed; empty where it fits or cannot be told
     */
    public record State(Sign sign, @Nullable SignOff last, Fit fit, List<Fingerprint.Part> changed) {
        public State {
            changed = List.copyOf(changed);
        }

        /** For instance {@code Checked: M. Keller, 2024-05-02; since then changed: the job.} */
        public String words() {
            String name = Character.toUpperCase(Texts.words(sign).charAt(0))
                    + Texts.words(sign).substring(1);
            SignOff signed = last;
            if (signed == null) {
                return name + ": not signed.";
            }
            return name + ": " + signed.by() + ", " + signed.at() + (fit == Fit.FITS ? "." : since());
        }

        private String since() {
            return changed.isEmpty()
                    ? "; since then changed."
                    : "; since then changed: "
                            + changed.stream().map(Fingerprint.Part::words).collect(Collectors.joining(", ")) + ".";
        }
    }

    public static SignOffs of(JobRecord record, Fingerprint now) {
        List<State> states = new ArrayList<>();
        for (Sign sign : Sign.values()) {
            states.add(last(record, sign)
                    .map(signed -> state(signed, now))
                    .orElseGet(() -> new State(sign, null, Fit.UNSIGNED, List.of())));
        }
        return new SignOffs(states);
    }

    private static Optional<SignOff> last(JobRecord record, Sign sign) {
        return record.signOffs().stream().filter(one -> one.sign() == sign).reduce((earlier, later) -> later);
    }

    private static State state(SignOff signed, Fingerprint now) {
        Optional<Fingerprint> then = Fingerprint.read(signed.fingerprint());
        boolean fits = then.filter(now::fits).isPresent();
        return new State(
                signed.sign(),
                signed,
                fits ? Fit.FITS : Fit.CHANGED,
                fits ? List.of() : then.map(now::changedSince).orElse(List.of()));
    }

    public State of(Sign sign) {
        return states.get(sign.ordinal());
    }

    /** What is to be signed next: the first that nobody signed, or that no longer fits; empty where all is signed. */
    public Optional<Sign> next() {
        return states.stream()
                .filter(state -> state.fit() != Fit.FITS)
                .map(State::sign)
                .findFirst();
    }

    /** The line that signing adds to the record; the time is handed in. */
    public static SignOff sign(Sign sign, String by, String at, Fingerprint now) {
        if (by.isBlank()) {
            throw new IllegalArgumentException("Signing " + Texts.words(sign) + " needs a name.");
        }
        return new SignOff(sign, by, at, now.inFile());
    }
}
