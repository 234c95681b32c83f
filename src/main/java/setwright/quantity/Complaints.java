package setwright.quantity;

import java.util.List;

/** The sentences about a text that cannot be read as the quantity wanted. */
record Complaints(String typed, Measure measure, Unit bare) {
    private static final int SHOWN = 60;
    private static final String BEYOND = "is beyond the numbers that can be computed with, about 1e-300 to 1e300";

    /** The text followed by what is the matter with it. */
    Unreadable that(String what) {
        String shown = typed.length() > SHOWN ? typed.substring(0, SHOWN) + "..." : typed;
        return new Unreadable(shown + " " + what + ".");
    }

    Unreadable nothing() {
        return new Unreadable("Nothing is written; " + wanted() + ".");
    }

    Unreadable tooLong(int longest) {
        return that("is longer than " + longest + " letters; " + wanted());
    }

    Unreadable comma() {
        return that("has a comma; the decimal sign is a point, so one and a half is 1.5, and thousands are written"
                + " without a mark");
    }

    Unreadable beyond() {
        return that(BEYOND);
    }

    Unreadable noUnit(String found) {
        return that("has " + found + ", which is no unit of it; " + wanted());
    }

    Unreadable noNumber(String found) {
        return found.isEmpty()
                ? that("ends where a number is expected; " + wanted())
                : that("has " + found + " where a number is expected; " + wanted());
    }

    Unreadable notClosed(int place) {
        return that("opens a bracket at place " + place + " and does not close it");
    }

    Unreadable notOpened(int place) {
        return that("closes a bracket at place " + place + " that was not opened");
    }

    Unreadable noSign(String rest) {
        return that("has no + - * or / before " + rest);
    }

    Unreadable dividesByZero() {
        return that("divides by zero");
    }

    Unreadable dividesBy(Unit unit) {
        return that("divides by a number of " + unit.symbol() + "; divide by a plain number");
    }

    Unreadable multiplies(Unit left, Unit right) {
        return that(
                "multiplies " + left.symbol() + " by " + right.symbol() + "; one of the two has to be a plain number");
    }

    Unreadable bareBeside(Unit beside) {
        return that("has a number without a unit beside one in " + beside.symbol()
                + "; write the unit of each number, or one behind a bracket");
    }

    Unreadable secondUnit(Unit first, Unit second) {
        return that("has " + second.symbol() + " behind a bracket that holds " + first.symbol()
                + " already; write one of the two");
    }

    Unreadable needsSmallerUnit(Unit above) {
        return that("needs the unit of the number behind " + above.symbol() + ", a smaller one than that");
    }

    Unreadable needsWholeAbove(Unit above, Unit below) {
        return that("needs a whole number of " + above.symbol() + ", and in " + below.symbol() + " less than one "
                + above.symbol());
    }

    private String wanted() {
        List<String> symbols = measure.accepted().stream()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .toList();
        String plain = bare.symbol().isEmpty() ? "as a plain number or in " : "in ";
        return measure.words() + " is wanted, " + plain + String.join(", ", symbols);
    }
}
