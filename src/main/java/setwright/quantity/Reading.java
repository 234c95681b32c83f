package setwright.quantity;

import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Reads quantities as people write them ({@code 1/2 in}, {@code 1-1/2"}, {@code 38 mm}, {@code #7}, {@code 34°15'},
 * {@code 48 ft-lb}, {@code 20 + 3.5}); a bare number takes the unit of {@link #bare()}.
 *
 * <p>What is read is worked out exactly and rounded once. A typed value keeps its text; only where a number stood bare,
 * the unit that it was read in is written behind it, so that the text says the same whoever reads it.
 */
public record Reading(UnitSystem bare) {
    /**
     * The value of a text in the unit that the program computes in.
     *
     * @throws Unreadable where the text is not a quantity of that measure
     */
    public double inside(Measure measure, String text) {
        return read(measure, text).value();
    }

    /**
     * The same, not rounded; exact for all but angles.
     *
     * @throws Unreadable where the text is not a quantity of that measure
     */
    public Rational exact(Measure measure, String text) {
        return read(measure, text).inside();
    }

    public Typed<Length> length(String text) {
        return length(Measure.LENGTH, text);
    }

    /** A length, a small one, or a feed per turn or tooth. */
    public Typed<Length> length(Measure measure, String text) {
        return typed(measure, Dimension.LENGTH, text, Length::new);
    }

    public Typed<Angle> angle(String text) {
        return typed(Measure.ANGLE, Dimension.ANGLE, text, Angle::new);
    }

    /** A time, for which a bare number is minutes. */
    public Typed<Time> time(String text) {
        return time(Measure.TIME, text);
    }

    public Typed<Time> time(Measure measure, String text) {
        return typed(measure, Dimension.TIME, text, Time::new);
    }

    public Typed<Force> force(String text) {
        return typed(Measure.FORCE, Dimension.FORCE, text, Force::new);
    }

    public Typed<Torque> torque(String text) {
        return typed(Measure.TORQUE, Dimension.TORQUE, text, Torque::new);
    }

    public Typed<Power> power(String text) {
        return typed(Measure.POWER, Dimension.POWER, text, Power::new);
    }

    public Typed<Stress> stress(String text) {
        return stress(Measure.STRESS, text);
    }

    /** A stress, or a unit power. */
    public Typed<Stress> stress(Measure measure, String text) {
        return typed(measure, Dimension.STRESS, text, Stress::new);
    }

    public Typed<SpindleSpeed> spindleSpeed(String text) {
        return typed(Measure.SPINDLE_SPEED, Dimension.TURNING, text, SpindleSpeed::new);
    }

    public Typed<Speed> cuttingSpeed(String text) {
        return speed(Measure.CUTTING_SPEED, text);
    }

    public Typed<Speed> feed(String text) {
        return speed(Measure.FEED, text);
    }

    /** A cutting speed or a feed. */
    public Typed<Speed> speed(Measure measure, String text) {
        return typed(measure, Dimension.SPEED, text, Speed::new);
    }

    public Typed<Mass> mass(String text) {
        return typed(Measure.MASS, Dimension.MASS, text, Mass::new);
    }

    public Typed<Density> density(String text) {
        return typed(Measure.DENSITY, Dimension.DENSITY, text, Density::new);
    }

    public Typed<Stiffness> stiffness(String text) {
        return typed(Measure.STIFFNESS, Dimension.STIFFNESS, text, Stiffness::new);
    }

    public Typed<Frequency> frequency(String text) {
        return typed(Measure.FREQUENCY, Dimension.FREQUENCY, text, Frequency::new);
    }

    public Typed<Ratio> ratio(String text) {
        return ratio(Measure.RATIO, text);
    }

    /** A plain number, or one in percent. */
    public Typed<Ratio> ratio(Measure measure, String text) {
        return typed(measure, Dimension.RATIO, text, Ratio::new);
    }

    private <Q extends Quantity> Typed<Q> typed(
            Measure measure, Dimension dimension, String text, DoubleFunction<Q> quantity) {
        if (measure.dimension() != dimension) {
            throw new IllegalArgumentException(measure + " is no measure of " + dimension + ".");
        }
        Expression.Read read = read(measure, text);
        return new Typed<>(read.text(), quantity.apply(read.value()));
    }

    private Expression.Read read(Measure measure, String text) {
        if (measure == Measure.LENGTH) {
            Optional<Rational> drill = DrillNames.named(text);
            if (drill.isPresent()) {
                return new Expression.Read(
                        text.strip(), drill.get(), drill.get().nearest());
            }
        }
        return new Expression(measure, measure.unit(bare), text).read();
    }
}
