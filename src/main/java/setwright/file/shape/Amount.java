package setwright.file.shape;

import java.util.List;
import java.util.function.BiFunction;
import setwright.file.json.Quoted;
import setwright.quantity.Angle;
import setwright.quantity.Density;
import setwright.quantity.Force;
import setwright.quantity.Frequency;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Measure;
import setwright.quantity.Power;
import setwright.quantity.Quantity;
import setwright.quantity.Ratio;
import setwright.quantity.Reading;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Stiffness;
import setwright.quantity.Stress;
import setwright.quantity.Time;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;

/**
 * One kind of quantity in a file.
 *
 * @param reads how its text is read
 * @param words what it is, in words
 */
record Amount(
        Class<? extends Quantity> type,
        BiFunction<Reading, String, Typed<? extends Quantity>> reads,
        String words,
        String example) {

    private static final List<Amount> ALL = List.of(
            new Amount(Length.class, Amount::length, "a length with its unit", "38 mm"),
            new Amount(Angle.class, Reading::angle, "an angle with its unit", "118 deg"),
            new Amount(Time.class, Reading::time, "a time with its unit", "2 min"),
            new Amount(Force.class, Reading::force, "a force with its unit", "15 kN"),
            new Amount(Torque.class, Reading::torque, "a torque with its unit", "30 N*m"),
            new Amount(Power.class, Reading::power, "a power with its unit", "1.5 kW"),
            new Amount(Stress.class, Reading::stress, "a stress with its unit", "1780 N/mm2"),
            new Amount(SpindleSpeed.class, Reading::spindleSpeed, "a spindle speed with its unit", "660 rev/min"),
            new Amount(Speed.class, Reading::feed, "a speed with its unit", "120 mm/min"),
            new Amount(Mass.class, Reading::mass, "a mass with its unit", "28 kg"),
            new Amount(Density.class, Reading::density, "a density with its unit", "7850 kg/m3"),
            new Amount(Stiffness.class, Reading::stiffness, "a stiffness with its unit", "10 N/um"),
            new Amount(Frequency.class, Reading::frequency, "a frequency with its unit", "850 Hz"),
            new Amount(Ratio.class, Reading::ratio, "a number", "0.15"));

    private static final Reading READING = new Reading(UnitSystem.METRIC);

    static Amount of(Class<?> type) {
        return ALL.stream()
                .filter(amount -> amount.type().equals(type))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(type + " has no place in files yet."));
    }

    /** A feed per turn or tooth is a length too. */
    private static Typed<Length> length(Reading reading, String text) {
        if (text.endsWith("rev") || text.endsWith("turn")) {
            return reading.length(Measure.FEED_PER_REV, text);
        }
        return reading.length(text.endsWith("tooth") ? Measure.FEED_PER_TOOTH : Measure.LENGTH, text);
    }

    /**
     * The quantity with its text.
     *
     * @throws IllegalArgumentException with a message for whoever reads the file
     */
    Typed<? extends Quantity> read(String text) {
        Typed<? extends Quantity> typed = reads.apply(READING, text);
        if (type != Ratio.class && !typed.text().equals(text.strip())) {
            throw new Unreadable("Found " + Quoted.of(text) + " without a unit; accepted here: " + words + ", such as "
                    + Quoted.of(example) + ".");
        }
        return typed;
    }
}
