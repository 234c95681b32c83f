package setwright.quantity.thread;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.Unreadable;
import setwright.quantity.thread.ScrewThread.Series;

/** The listed threads of Whitworth, British Association and pipe form: {@code 1/4 BSW}, {@code 4 BA}, {@code 1/8 BSP}, {@code 1/8 NPT}. */
public final class OtherThreads {
    private static final List<Listed> LISTED = CsvRows.beside(OtherThreads.class, "other-threads.csv").stream()
            .map(OtherThreads::read)
            .toList();
    private static final Pattern WRITTEN = Pattern.compile(
            "(\\d{1,2}(?:-\\d{1,2}/\\d{1,2}|/\\d{1,2})?)(?:\"|\\s*in)?(?:\\s*-\\s*\\d{1,2}(?:\\.5)?)?\\s*(BSW|BSF|BA|BSPP|BSP|NPT)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PIPE = Pattern.compile("G\\s*(\\d{1,2}(?:-\\d{1,2}/\\d{1,2}|/\\d{1,2})?)");

    /**
     * A listed thread.
     *
     * @param drill customary before its tap, as stamped; empty where none is known here
     */
    public record Listed(ScrewThread thread, String drill, Source source) {}

    private OtherThreads() {}

    public static List<Listed> listed() {
        return LISTED;
    }

    public static Optional<Listed> of(ScrewThread thread) {
        return LISTED.stream().filter(one -> one.thread().equals(thread)).findFirst();
    }

    /** Empty where the text does not name such a thread at all. */
    static Optional<ScrewThread> read(String text) {
        Matcher pipe = PIPE.matcher(text);
        if (pipe.matches()) {
            return Optional.of(named(pipe.group(1), Series.BSP));
        }
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return Optional.empty();
        }
        String series = written.group(2).toUpperCase(Locale.ROOT).replace("BSPP", "BSP");
        return Optional.of(named(written.group(1), Series.valueOf(series)));
    }

    private static ScrewThread named(String size, Series series) {
        String wanted = size + " " + series.words();
        return LISTED.stream()
                .map(Listed::thread)
                .filter(thread -> thread.designation().equals(wanted))
                .findFirst()
                .orElseThrow(() ->
                        new Unreadable("'" + wanted + "' is not listed; of this series are: " + sizes(series) + "."));
    }

    private static String sizes(Series series) {
        return LISTED.stream()
                .map(Listed::thread)
                .filter(thread -> thread.series() == series)
                .map(ScrewThread::designation)
                .collect(Collectors.joining(", "));
    }

    private static Listed read(CsvRows.Row row) {
        Unit unit = row.text("unit").equals("in") ? Unit.IN : Unit.MM;
        Series series = Arrays.stream(Series.values())
                .filter(one -> one.words().equals(row.text("series")))
                .findFirst()
                .orElseThrow();
        double pitch = row.has("tpi") ? 25.4 / row.number("tpi") : row.number("pitch");
        return new Listed(
                new ScrewThread(row.text("thread"), series, unit.toInside(row.number("major")), pitch),
                row.text("tap_drill"),
                Source.of(row.text("source")));
    }
}
