package setwright.location.indexing;

import java.util.LinkedHashMap;
import java.util.Map;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;

/** Reads the cells of the tables: {@code N=6;ratio=40}, {@code 39/49}, {@code 21/23-11/33}. */
final class Moves {
    private Moves() {}

    static Map<String, String> said(String cell) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String part : cell.split(";")) {
            String[] two = part.split("=", 2);
            said.put(two[0], two.length > 1 ? two[1] : "");
        }
        return said;
    }

    static Rational fraction(String text) {
        String[] two = text.strip().replace("+", "").split("/");
        return two.length == 1 ? Rational.decimal(two[0]) : Rational.of(Long.parseLong(two[0]), Long.parseLong(two[1]));
    }

    /** A sum of fractions with their signs. */
    static Rational sum(String text) {
        Rational sum = Rational.ZERO;
        for (String part : text.replace(" ", "").split("(?=[+-])")) {
            sum = sum.plus(fraction(part));
        }
        return sum;
    }

    static IndexPlates plates(String family) {
        return family.equals("two-sided") ? IndexPlates.TWO_SIDED : IndexPlates.THREE_PLATE;
    }

    static IndexHead head(String family) {
        return IndexHead.of(40, plates(family));
    }

    static java.util.List<CsvRows.Row> table(String name) {
        return CsvRows.beside(Moves.class, name);
    }
}
