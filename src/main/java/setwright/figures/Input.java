package setwright.figures;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Measure;
import setwright.quantity.UnitSystem;

/**
 * A blank of a bench figure.
 *
 * @param key as it is typed
 * @param kind what is typed
 * @param measure of a measure or a list of them; null for the other kinds
 * @param choices of a choice; empty for the other kinds
 * @param standard what counts where it is left out, as it would be typed; empty where it is left out altogether
 * @param leftOut what happens where it is left out, in words; empty: it has to be given
 * @param range what is accepted, in the metric unit of the measure
 */
public record Input(
        String key,
        Kind kind,
        @Nullable Measure measure,
        List<String> choices,
        String standard,
        String leftOut,
        Range range) {

    private static final int MOST = 10_000;

    /** What is typed into a blank. */
    public enum Kind {
        MEASURE,
        COUNT,
        CHOICE,
        WORDS,
        LIST
    }

    /** From a least to a greatest value; {@code above} where the least itself is not accepted. */
    public record Range(double least, boolean above, double greatest) {
        boolean takes(double number) {
            return number <= greatest && (above ? number > least : number >= least);
        }
    }

    private static final Range ANY = new Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);
    private static final Range POSITIVE = new Range(0, true, Double.POSITIVE_INFINITY);

    public Input {
        choices = List.copyOf(choices);
    }

    /** A number with a unit, above nought unless said otherwise. */
    static Input measure(String key, Measure measure) {
        return new Input(key, Kind.MEASURE, measure, List.of(), "", "", POSITIVE);
    }

    static Input count(String key) {
        return new Input(key, Kind.COUNT, null, List.of(), "", "", new Range(1, false, MOST));
    }

    static Input choice(String key, String... choices) {
        return new Input(key, Kind.CHOICE, null, List.of(choices), "", "", ANY);
    }

    static Input words(String key) {
        return new Input(key, Kind.WORDS, null, List.of(), "", "", ANY);
    }

    /** Numbers with units, between commas. */
    static Input list(String key, Measure measure) {
        return new Input(key, Kind.LIST, measure, List.of(), "", "", ANY);
    }

    /** With what counts where it is left out. */
    Input or(String text) {
        return new Input(key, kind, measure, choices, text, text, range);
    }

    /** May be left out; the words say what happens then. */
    Input maybe(String words) {
        return new Input(key, kind, measure, choices, "", words, range);
    }

    Input from(double least) {
        return within(least, range.greatest());
    }

    Input upTo(double greatest) {
        return new Input(
                key, kind, measure, choices, standard, leftOut, new Range(range.least(), range.above(), greatest));
    }

    Input within(double least, double greatest) {
        return new Input(key, kind, measure, choices, standard, leftOut, new Range(least, false, greatest));
    }

    /** Above nought only. */
    Input above() {
        return new Input(key, kind, measure, choices, standard, leftOut, POSITIVE);
    }

    /** Negative ones too. */
    Input any() {
        return new Input(key, kind, measure, choices, standard, leftOut, ANY);
    }

    public boolean required() {
        return leftOut.isEmpty();
    }

    /** The unit that a bare number takes; empty where it takes none. */
    public String unit(UnitSystem units) {
        return measure == null ? "" : measure.unit(units).symbol();
    }

    /** What is accepted, in words. */
    public String accepted() {
        return switch (kind) {
            case CHOICE -> String.join(", ", choices);
            case COUNT -> "a whole number from " + plain(range.least()) + " to " + plain(range.greatest());
            case MEASURE, LIST -> accepted(measure == null ? "" : unit(UnitSystem.METRIC));
            case WORDS -> "words";
        };
    }

    private String accepted(String unit) {
        String behind = unit.isEmpty() ? "" : " " + unit;
        String from = range.least() == Double.NEGATIVE_INFINITY
                ? "any"
                : (range.above() ? "above " : "from ") + plain(range.least());
        String to = range.greatest() == Double.POSITIVE_INFINITY ? "" : " up to " + plain(range.greatest());
        return from + to + behind;
    }

    static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** As a listing shows it: {@code [helix=0 °]}. */
    public String listed() {
        String unit = unit(UnitSystem.METRIC);
        String said = kind == Kind.CHOICE
                ? key + " (" + String.join(", ", choices) + ")"
                : key + (unit.isEmpty() ? "" : " " + unit);
        if (required()) {
            return said;
        }
        return standard.isEmpty() ? "[" + said + "]" : "[" + said + " = " + standard + "]";
    }
}
