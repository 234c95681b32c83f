package setwright.location.key;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * A Woodruff key: half a disc. The depth in the shaft is that of the wall at its side; the training rule, height less half
 * the width, cuts 0.005 in deeper than the inch table.
 *
 * @param name width by diameter as listed, {@code 3/16 x 3/4}, {@code 5 x 16}
 * @param height of the key; millimetres all
 */
public record Woodruff(
        String name, double width, double diameter, double height, double depth, double inHub, Source source) {
    private static final double SAME = 1e-6;
    private static final Pattern NUMBER = Pattern.compile("#?(\\d{1,2})(\\d{2}(?:\\.5)?)");
    private static final List<Woodruff> LISTED = CsvRows.beside(Woodruff.class, "woodruff.csv").stream()
            .map(Woodruff::of)
            .toList();

    public static List<Woodruff> listed() {
        return LISTED;
    }

    /**
     * A key by its size, {@code 3/16 x 3/4}, or by its number, {@code 606}: its last two figures are eighths of an inch of
     * diameter, those before them 32nds of width.
     */
    public static Optional<Woodruff> called(String name) {
        String wanted = squeezed(name);
        Matcher number = NUMBER.matcher(wanted);
        return number.matches()
                ? sized(Double.parseDouble(number.group(1)) / 32, Double.parseDouble(number.group(2)) / 8)
                : LISTED.stream()
                        .filter(one -> squeezed(one.name()).equals(wanted))
                        .findFirst();
    }

    private static Optional<Woodruff> sized(double width, double diameter) {
        return LISTED.stream()
                .filter(one -> Math.abs(one.width() - Unit.IN.toInside(width)) < SAME
                        && Math.abs(one.diameter() - Unit.IN.toInside(diameter)) < SAME)
                .findFirst();
    }

    private static String squeezed(String name) {
        return name.replace(" ", "").replace("in", "").replace("mm", "");
    }

    private static Woodruff of(CsvRows.Row row) {
        Unit unit = row.text("unit").equals("in") ? Unit.IN : Unit.MM;
        return new Woodruff(
                row.text("name"),
                unit.toInside(row.number("width")),
                unit.toInside(row.number("diameter")),
                unit.toInside(row.number("height")),
                unit.toInside(row.number("depth")),
                unit.toInside(row.number("in_hub")),
                Source.of(row.text("source")));
    }

    /** How far the cutter goes in from the crown of the shaft. */
    public double fromCrown(double shaft) {
        return depth + KeySeat.riseOfArc(shaft, width);
    }
}
