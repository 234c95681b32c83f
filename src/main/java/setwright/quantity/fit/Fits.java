package setwright.quantity.fit;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Unreadable;

/** Tolerance classes of ISO 286 from 1 to 180 mm: the classes that a milling shop meets. */
public final class Fits {
    /** The rule under which a limit is printed; the deciding row is the class and band of sizes. */
    public static final Table LIMITS = new Table(
            "limits of size",
            "upper and lower deviation of a tolerance class in the band of the nominal size",
            Unit.UM,
            Source.of("ISO 286-2; the source of each cell stands with it"));

    private static final Fits LISTED = new Fits(FitTable.read("fits.csv"));
    private static final Pattern NOTE =
            Pattern.compile("[Øø⌀]?\\s*(\\d+(?:\\.\\d+)?)\\s*(?:mm)?\\s*([A-Za-z]{1,2}\\d{1,2})");

    private final List<CsvRows.Row> rows;

    private Fits(List<CsvRows.Row> rows) {
        this.rows = rows;
    }

    public static Fits listed() {
        return LISTED;
    }

    /** The classes that are listed, in the order of the table. */
    public List<String> classes() {
        return rows.stream().map(row -> row.text("class")).distinct().toList();
    }

    /** @throws Unreadable where the class is not listed, or not for that size */
    public Limits limits(double nominal, String toleranceClass) {
        return rows.stream()
                .filter(row -> row.text("class").equals(toleranceClass) && FitTable.takes(row, nominal))
                .findFirst()
                .map(row -> limits(nominal, row))
                .orElseThrow(() -> notListed(nominal, toleranceClass));
    }

    /** A pair such as {@code H7/g6}. */
    public Fit pair(double nominal, String holeOverShaft) {
        String[] classes = holeOverShaft.strip().split("\\s*/\\s*", -1);
        if (classes.length != 2) {
            throw new Unreadable("'" + holeOverShaft + "' is not a fit; it is written hole over shaft, as H7/g6.");
        }
        return new Fit(limits(nominal, classes[0]), limits(nominal, classes[1]));
    }

    /** Whether a text has the form of a size with a tolerance class, as {@code 12 H7}. */
    public static boolean looksLikeSize(String note) {
        return NOTE.matcher(note.strip()).matches();
    }

    /** Reads a size with its tolerance class as a drawing gives it: {@code 12 H7}, {@code Ø12H7}; millimetres. */
    public Limits read(String note) {
        Matcher matcher = NOTE.matcher(note.strip());
        if (!matcher.matches()) {
            throw new Unreadable("'" + note.strip() + "' is not a size with a tolerance class, as 12 H7.");
        }
        return limits(Double.parseDouble(matcher.group(1)), matcher.group(2));
    }

    private static Limits limits(double nominal, CsvRows.Row row) {
        return new Limits(
                nominal,
                row.text("class"),
                Unit.UM.toInside(row.number("upper_um")),
                Unit.UM.toInside(row.number("lower_um")),
                Source.of(row.text("source")));
    }

    private Unreadable notListed(double nominal, String toleranceClass) {
        return classes().contains(toleranceClass)
                ? new Unreadable(
                        toleranceClass + " is listed from 1 to 180 mm, not for " + FitTable.plain(nominal) + " mm.")
                : new Unreadable("'" + toleranceClass + "' is not among the tolerance classes listed here: "
                        + String.join(" ", classes()) + ".");
    }
}
