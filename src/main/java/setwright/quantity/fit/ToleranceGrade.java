package setwright.quantity.fit;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.quantity.CsvRows;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.Unreadable;

/**
 * A standard tolerance grade of ISO 286-1 (IT5 to IT14, 1 to 250 mm).
 *
 * @param tolerance millimetres, as printed in the standard's table
 */
public record ToleranceGrade(int grade, double diameter, double tolerance, Source source) {
    /** What the printed grades are rounded from: IT6 is 10 of these, IT7 16, IT8 25, IT9 40, IT10 64, IT11 100. */
    public static final Formula TOLERANCE_UNIT = new Formula(
            "i = 0.45 D^(1/3) + 0.001 D",
            symbol("i", "tolerance unit", Unit.UM, 0, 10),
            List.of(symbol("D", "geometric mean of the band of sizes", Unit.MM, 1, 500)),
            v -> toleranceUnit(v[0]),
            Source.of("from memory: ISO 286-1"));

    private static final List<CsvRows.Row> ROWS = FitTable.read("tolerance-grades.csv");
    private static final Pattern WRITTEN = Pattern.compile("IT\\s*(\\d{1,2})");
    private static final int FINEST = 5;
    private static final int COARSEST = 14;

    /** The tolerance unit in millimetres. */
    public static double toleranceUnit(double diameter) {
        return Unit.UM.toInside(0.45 * StrictMath.cbrt(diameter) + 0.001 * diameter);
    }

    /** @throws Unreadable where grade or diameter is outside the table */
    public static ToleranceGrade of(double diameter, int grade) {
        if (grade < FINEST || grade > COARSEST) {
            throw new Unreadable("IT" + grade + " is not listed; the grades run from IT5 to IT14.");
        }
        return ROWS.stream()
                .filter(row -> FitTable.takes(row, diameter))
                .findFirst()
                .map(row -> new ToleranceGrade(
                        grade, diameter, Unit.UM.toInside(row.number("IT" + grade)), Source.of(row.text("source"))))
                .orElseThrow(() -> new Unreadable(
                        "Tolerance grades are listed from 1 to 250 mm, not for " + FitTable.plain(diameter) + " mm."));
    }

    /** Reads {@code IT7}. */
    public static ToleranceGrade of(double diameter, String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches()) {
            throw new Unreadable("'" + written.strip() + "' is not a tolerance grade; it is written as IT7.");
        }
        return of(diameter, Integer.parseInt(matcher.group(1)));
    }
}
