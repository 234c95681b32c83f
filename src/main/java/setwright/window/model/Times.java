package setwright.window.model;

import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;

/** Times as one says them: seconds, minutes, hours. */
final class Times {
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double TWO_HOURS = 2 * HOUR;

    private Times() {}

    static String text(double seconds, Printing printing) {
        if (seconds < MINUTE) {
            return printing.of(Unit.SECOND, seconds);
        }
        return seconds < TWO_HOURS
                ? printing.of(Measure.TIME, rounded(seconds, MINUTE))
                : printing.of(Unit.HOUR, rounded(seconds, HOUR));
    }

    /** To a tenth of the unit; nobody can hold a time closer. */
    private static double rounded(double seconds, double unit) {
        return Math.round(seconds / unit * 10) / 10.0 * unit;
    }
}
