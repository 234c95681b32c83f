package setwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Reading;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;

/**
 * An input as it was read.
 *
 * @param typed as it was typed, or the standard value
 * @param values of a measure, count or list
 * @param words of a choice or words
 */
public record ReadInput(Input input, String typed, boolean isStandard, List<Given> values, String words) {
    private static final String HERE = "typed here";
    private static final String STANDARD = "the usual value";
    private static final int DIGITS = 9;

    public ReadInput {
        values = List.copyOf(values);
    }

    static ReadInput of(Input input, String typed, UnitSystem units) {
        return read(input, typed, units, HERE);
    }

    /** What counts where an input is left out: it is written in metric units. */
    static ReadInput standard(Input input) {
        return read(input, input.standard(), UnitSystem.METRIC, STANDARD);
    }

    private static ReadInput read(Input input, String typed, UnitSystem units, String origin) {
        boolean standard = origin.equals(STANDARD);
        return switch (input.kind()) {
            case MEASURE -> new ReadInput(input, typed, standard, List.of(measure(input, typed, units, origin)), typed);
            case COUNT -> new ReadInput(input, typed, standard, List.of(count(input, typed, origin)), typed);
            case CHOICE -> new ReadInput(input, typed, standard, List.of(), choice(input, typed));
            case WORDS -> new ReadInput(input, typed, standard, List.of(), typed);
            case LIST -> new ReadInput(input, typed, standard, list(input, typed, units), typed);
        };
    }

    private static Given measure(Input input, String typed, UnitSystem units, String origin) {
        Measure measure = Objects.requireNonNull(input.measure());
        double inside;
        try {
            inside = new Reading(units).inside(measure, typed);
        } catch (Unreadable unreadable) {
            throw Refusal.of(input.key(), String.valueOf(unreadable.getMessage()));
        }
        Unit unit = measure.unit(UnitSystem.METRIC);
        if (!Double.isFinite(inside) || !input.range().takes(rounded(unit.fromInside(inside)))) {
            throw Refusal.of(input.key(), typed + " is out of range; accepted: " + input.accepted() + ".");
        }
        return Given.of(input.key().replace('-', ' '), inside, unit, origin);
    }

    /** Without what a conversion leaves behind the twelfth figure, so that 89.999999999999986 is 90. */
    private static double rounded(double number) {
        return java.math.BigDecimal.valueOf(number)
                .round(new java.math.MathContext(DIGITS + 3))
                .doubleValue();
    }

    private static Given count(Input input, String typed, String origin) {
        if (!typed.strip().matches("\\d{1,9}") || !input.range().takes(Integer.parseInt(typed.strip()))) {
            throw Refusal.of(input.key(), "'" + typed + "' is not accepted; accepted: " + input.accepted() + ".");
        }
        return Given.of(input.key().replace('-', ' '), Integer.parseInt(typed.strip()), Unit.NONE, origin);
    }

    private static String choice(Input input, String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        return input.choices().stream()
                .filter(choice -> choice.toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst()
                .orElseThrow(() -> Refusal.of(
                        input.key(), "'" + typed + "' is not accepted; accepted: " + input.accepted() + "."));
    }

    private static List<Given> list(Input input, String typed, UnitSystem units) {
        List<Given> values = new ArrayList<>();
        for (String one : typed.split(",", -1)) {
            if (one.isBlank()) {
                throw Refusal.of(input.key(), "'" + typed + "' has an empty place between two commas.");
            }
            values.add(measure(input, one.strip(), units, HERE));
        }
        return values;
    }
}
