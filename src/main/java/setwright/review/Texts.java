package setwright.review;

import java.util.stream.Stream;
import setwright.job.InWords;
import setwright.job.Size;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/** How values stand as text in reviews. */
final class Texts {
    private Texts() {}

    static String words(Enum<?> value) {
        return InWords.word(value);
    }

    static String size(Size size) {
        String nominal = size.nominal().text();
        return size.least() == null || size.greatest() == null
                ? nominal
                : nominal + ", " + size.least().text() + " to "
                        + size.greatest().text();
    }

    /** A figure as people of the job's units read it; what they have no unit of their own for stays as it is. */
    static String figure(Printing printing, Unit unit, double inside) {
        return printing.of(read(printing, unit), inside);
    }

    private static Unit read(Printing printing, Unit unit) {
        return Stream.of(Measure.values())
                .filter(measure -> measure.unit(UnitSystem.METRIC) == unit)
                .map(measure -> measure.unit(printing.units()))
                .findFirst()
                .orElse(unit);
    }
}
