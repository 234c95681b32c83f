package setwright.review;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.plan.Plan;

/**
 * What a name is put under: SHA-256 over the job as planned, what was drawn up from it with the shop rows in use, and the
 * figures as printed. The record has no part in it.
 *
 * @param whole over all of it, 64 hexadecimal digits; two fit where this is the same
 * @param job over the job as planned, 16 digits; this and the next two only say what changed
 * @param drawnUp over the drawn-up values and the rows in use
 * @param figures over the figures as printed
 */
public record Fingerprint(String whole, String job, String drawnUp, String figures) {
    private static final int PART = 16;
    private static final int GROUP = 4;
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9a-f]{64}):([0-9a-f]{16}):([0-9a-f]{16}):([0-9a-f]{16})");

    /** What may have changed since, most telling first. */
    public enum Part {
        JOB("the job"),
        DRAWN_UP("what is drawn up from it, or a shop row"),
        FIGURES("figures that come out differently");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param canonicalPlan the {@code plan} part of the job's file in its canonical form */
    public static Fingerprint of(Plan plan, String canonicalPlan) {
        List<String> drawnUp = Entries.of(plan).stream().map(Fingerprint::line).toList();
        List<String> figures = PrintedFigures.of(plan);
        String values = String.join("\n", drawnUp);
        String printed = String.join("\n", figures);
        return new Fingerprint(
                digest(canonicalPlan + "\n" + values + "\n" + printed),
                digest(canonicalPlan).substring(0, PART),
                digest(values).substring(0, PART),
                digest(printed).substring(0, PART));
    }

    private static String line(Entry entry) {
        return entry.address() + ": " + entry.withStanding();
    }

    /** As it stands on pages: four groups of four. */
    public String onPage() {
        List<String> groups = new ArrayList<>();
        for (int i = 0; i < GROUP; i++) {
            groups.add(whole.substring(i * GROUP, (i + 1) * GROUP));
        }
        return String.join(" ", groups);
    }

    /** As it stands in files. */
    public String inFile() {
        return String.join(":", whole, job, drawnUp, figures);
    }

    /** What {@link #inFile()} wrote; empty for anything else. */
    public static Optional<Fingerprint> read(String written) {
        Matcher match = WRITTEN.matcher(written);
        return match.matches()
                ? Optional.of(new Fingerprint(match.group(1), match.group(2), match.group(3), match.group(4)))
                : Optional.empty();
    }

    public boolean fits(Fingerprint other) {
        return whole.equals(other.whole);
    }

    /** What is no longer as it was then; empty where all fits. */
    public List<Part> changedSince(Fingerprint then) {
        List<Part> changed = new ArrayList<>();
        if (!job.equals(then.job)) {
            changed.add(Part.JOB);
        }
        if (!drawnUp.equals(then.drawnUp)) {
            changed.add(Part.DRAWN_UP);
        }
        if (!figures.equals(then.figures)) {
            changed.add(Part.FIGURES);
        }
        return changed;
    }

    private static String digest(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            StringBuilder digits = new StringBuilder();
            for (byte each : sum) {
                digits.append(Character.forDigit((each >> 4) & 0xf, 16)).append(Character.forDigit(each & 0xf, 16));
            }
            return digits.toString();
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("This Java has no SHA-256.", missing);
        }
    }
}
