package setwright.window.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A typed value a little larger or smaller, on whole steps of what is set at the machine. */
public final class Nudge {
    private static final Pattern VALUE = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?)(\\s*)(\\S*)");
    private static final BigDecimal FINE_BELOW = BigDecimal.valueOf(5);

    private Nudge() {}

    /** The text so many steps on; the same where it is no plain number with a unit, or would come to nothing. */
    public static String text(String text, int steps) {
        Matcher value = VALUE.matcher(text.strip());
        if (!value.matches()) {
            return text;
        }
        BigDecimal before = new BigDecimal(value.group(1));
        BigDecimal step = step(before, value.group(3));
        RoundingMode past = steps < 0 ? RoundingMode.UP : RoundingMode.DOWN;
        BigDecimal after =
                before.divide(step, 0, past).add(BigDecimal.valueOf(steps)).multiply(step);
        return after.signum() <= 0
                ? text
                : after.stripTrailingZeros().toPlainString() + value.group(2) + value.group(3);
    }

    private static BigDecimal step(BigDecimal before, String unit) {
        return switch (unit) {
            case "rev/min", "mm/min" -> BigDecimal.valueOf(5);
            case "in" -> new BigDecimal("0.05");
            case "in/min" -> new BigDecimal("0.5");
            default -> before.compareTo(FINE_BELOW) < 0 ? new BigDecimal("0.1") : BigDecimal.ONE;
        };
    }
}
