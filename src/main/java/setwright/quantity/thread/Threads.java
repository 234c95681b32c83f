package setwright.quantity.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Unreadable;
import setwright.quantity.thread.ScrewThread.Series;

/**
 * The listed threads, and the reader of their designations: {@code M8}, {@code M8x1.25}, {@code 1/4-20}, {@code 1/4-20
 * UNC}, {@code #4-40}, {@code 1-1/8-7}, and those of {@link OtherThreads}. A tolerance class at the end ({@code M8-6H}, {@code 1/4-20 UNC-2B}) is passed over.
 */
public final class Threads {
    private static final Threads LISTED = new Threads(ThreadTable.read());
    private static final double SAME = 1e-6;
    private static final double GREATEST_MAJOR = 300;

    private static final String NUMBER = "\\d{1,4}(?:\\.\\d{1,4})?";
    private static final Pattern METRIC = Pattern.compile(
            "M\\s*(" + NUMBER + ")(?:\\s*[xX×*]\\s*(" + NUMBER + "))?(?:\\s*-?\\s*\\d[GHgh]\\d?[gh]?)?");
    private static final Pattern UNIFIED = Pattern.compile(
            "(#\\d{1,2}|\\d{1,2}-\\d{1,2}/\\d{1,2}|\\d{1,2}/\\d{1,2}|\\d{1,2})(?:\"|\\s*in)?\\s*-\\s*(\\d{1,3})(?:\\s*-?\\s*(UNC|UNF|UNEF|UNS|UN))?(?:\\s*-?\\s*\\d[AB])?");

    private final List<ThreadRow> rows;

    private Threads(List<ThreadRow> rows) {
        this.rows = rows;
    }

    /** The threads of the packed table: ISO coarse and fine from M1.6 to M36, UNC and UNF from #0 to 1-1/2 in. */
    public static Threads listed() {
        return LISTED;
    }

    public List<ThreadRow> rows() {
        return rows;
    }

    /** The table row of a thread; empty for a size and pitch that is not listed. */
    public Optional<ThreadRow> row(ScrewThread thread) {
        return rows.stream().filter(row -> row.thread().equals(thread)).findFirst();
    }

    /** @throws Unreadable where the text is not a metric or unified thread */
    public ScrewThread read(String designation) {
        String text = designation.strip();
        if (text.contains(",")) {
            throw new Unreadable(
                    "'" + text + "' has a comma; write the pitch with a point: " + text.replace(',', '.') + ".");
        }
        Optional<ScrewThread> other = OtherThreads.read(text);
        if (other.isPresent()) {
            return other.get();
        }
        Matcher metric = METRIC.matcher(text);
        if (metric.matches()) {
            return metric(text, Double.parseDouble(metric.group(1)), metric.group(2));
        }
        Matcher unified = UNIFIED.matcher(text);
        if (unified.matches()) {
            return unified(unified.group(1), Integer.parseInt(unified.group(2)), unified.group(3));
        }
        throw new Unreadable("'" + text
                + "' is not a thread that is read here: metric (M8, M8x1.25), unified (1/4-20, 1/4-20 UNC, #4-40),"
                + " Whitworth (1/4 BSW, 1/4 BSF), 4 BA, 1/8 BSP, 1/8 NPT.");
    }

    private ScrewThread metric(String text, double major, @Nullable String pitch) {
        if (pitch == null) {
            return find(major, Series.ISO_COARSE)
                    .orElseThrow(() -> new Unreadable(
                            "'" + text + "' is not among the coarse threads listed here; write its pitch, as M7x1."));
        }
        double wanted = Double.parseDouble(pitch);
        return find(major, wanted, false)
                .orElseGet(() -> unlisted("M" + plain(major) + "x" + plain(wanted), Series.ISO_OTHER, major, wanted));
    }

    private ScrewThread unified(String size, int perInch, @Nullable String series) {
        double major = 25.4 * unifiedSize(size);
        String written = size + "-" + perInch;
        if (perInch == 0) {
            throw new Unreadable("'" + written + "' has no threads per inch.");
        }
        double pitch = 25.4 / perInch;
        Optional<ScrewThread> listed = find(major, pitch, true);
        if (series != null) {
            requireSeries(written, major, listed, series);
        }
        return listed.orElseGet(() -> unlisted(written, Series.UN_OTHER, major, pitch));
    }

    /** A size of UNC or UNF has one number of threads per inch; another is a slip of the pen. */
    private void requireSeries(String written, double major, Optional<ScrewThread> listed, String series) {
        boolean main = series.equals("UNC") || series.equals("UNF");
        if (listed.isPresent() && !listed.get().series().words().equals(series)) {
            throw new Unreadable("'" + written + " " + series + "': " + written + " is "
                    + listed.get().series().words() + meant(major, main ? series : "") + ".");
        }
        if (listed.isEmpty() && main) {
            throw new Unreadable("'" + written + " " + series + "' is not listed" + meant(major, series) + ".");
        }
    }

    private String meant(double major, String series) {
        return rows.stream()
                .map(ThreadRow::thread)
                .filter(thread -> thread.series().words().equals(series) && near(thread.major(), major))
                .findFirst()
                .map(thread -> "; the " + series + " thread of this size is " + thread.designation())
                .orElse("");
    }

    private static ScrewThread unlisted(String designation, Series series, double major, double pitch) {
        if (!(major > 0 && major <= GREATEST_MAJOR && pitch > 0 && pitch <= major / 2)) {
            throw new Unreadable("'" + designation
                    + "' is not a thread: the diameter goes up to 300 mm, the pitch up to" + " half the diameter.");
        }
        return new ScrewThread(designation, series, major, pitch);
    }

    private Optional<ScrewThread> find(double major, Series series) {
        return rows.stream()
                .map(ThreadRow::thread)
                .filter(thread -> thread.series() == series && near(thread.major(), major))
                .findFirst();
    }

    private Optional<ScrewThread> find(double major, double pitch, boolean inch) {
        return rows.stream()
                .map(ThreadRow::thread)
                .filter(thread ->
                        thread.series().isInch() == inch && near(thread.major(), major) && near(thread.pitch(), pitch))
                .findFirst();
    }

    /** Inches; number sizes run up by 0.013 in from 0.060 in. */
    static double unifiedSize(String size) {
        return size.startsWith("#") ? 0.060 + 0.013 * Integer.parseInt(size.substring(1)) : ThreadTable.fraction(size);
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < SAME;
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
