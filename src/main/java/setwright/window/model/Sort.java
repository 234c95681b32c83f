package setwright.window.model;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Quantity;
import setwright.quantity.Reading;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.quantity.Unreadable;

/**
 * How values of one sort are typed and written.
 *
 * @param choices what it may be set to on a line; empty where it is typed
 */
record Sort<T>(
        BiFunction<Reading, String, T> read,
        Function<T, String> text,
        BiFunction<Planned, String, List<Choice>> choices) {

    static final Sort<Typed<SpindleSpeed>> SPINDLE_SPEED =
            typed((reading, text) -> positive(reading.spindleSpeed(text)));
    static final Sort<Typed<Speed>> FEED = typed((reading, text) -> positive(reading.feed(text)));

    static final Sort<Typed<Angle>> ANGLE = typed((reading, text) -> reading.angle(text));
    static final Sort<Typed<Time>> TIME = typed((reading, text) -> positive(reading.time(text)));
    static final Sort<Typed<Torque>> TORQUE = typed((reading, text) -> positive(reading.torque(text)));

    /** A length; what is more than nothing and what may be nothing or less is said by the place. */
    static Sort<Typed<Length>> length(double least) {
        return typed((reading, text) -> atLeast(least, reading.length(text)));
    }

    static final Sort<Typed<Length>> SIZE = typed((reading, text) -> positive(reading.length(text)));

    /** A whole number of at least one. */
    static final Sort<Integer> COUNT =
            new Sort<>((reading, text) -> count(text), value -> Integer.toString(value), (planned, line) -> List.of());

    private static Integer count(String text) {
        if (!text.strip().matches("[1-9][0-9]{0,4}")) {
            throw new Unreadable("has to be a whole number of at least 1");
        }
        return Integer.valueOf(text.strip());
    }

    static Sort<String> row(BiFunction<Planned, String, List<Choice>> choices) {
        return new Sort<>((reading, text) -> text, value -> value, choices);
    }

    static <E extends Enum<E>> Sort<E> words(List<E> values) {
        List<Choice> choices = values.stream()
                .map(value -> new Choice(value.name(), Words.of(value)))
                .toList();
        return new Sort<>(
                (reading, text) -> values.stream()
                        .filter(value -> value.name().equals(text))
                        .findFirst()
                        .orElseThrow(() -> new Unreadable(text + " is none of the choices")),
                Enum::name,
                (planned, line) -> choices);
    }

    private static <Q extends Quantity> Sort<Typed<Q>> typed(BiFunction<Reading, String, Typed<Q>> read) {
        return new Sort<>(read, Typed::text, (planned, line) -> List.of());
    }

    private static <Q extends Quantity> Typed<Q> positive(Typed<Q> typed) {
        if (typed.inside() <= 0) {
            throw new Unreadable("has to be more than 0");
        }
        return typed;
    }

    private static Typed<Length> atLeast(double least, Typed<Length> typed) {
        if (typed.inside() < least) {
            throw new Unreadable("may not be less than 0");
        }
        return typed;
    }
}
