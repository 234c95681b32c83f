package setwright.rigidity.stability;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import setwright.rigidity.stability.Receptance.Resonance;

/** The frequencies at which a border is looked at: close together where the tip rings, wider apart elsewhere. */
final class Scan {
    private static final double BELOW = 0.25;
    private static final double ABOVE = 6;
    private static final double WIDE = 0.005;
    private static final double CLOSE = 0.02;
    private static final double AROUND = 0.7;

    private Scan() {}

    /** In rad/s, rising. */
    static double[] of(Receptance... directions) {
        List<Resonance> all =
                Stream.of(directions).flatMap(one -> one.resonances().stream()).toList();
        double lowest = all.stream().mapToDouble(Resonance::frequency).min().orElseThrow();
        double highest = all.stream().mapToDouble(Resonance::frequency).max().orElseThrow();
        double steps = StrictMath.log(ABOVE * highest / (BELOW * lowest)) / WIDE;
        DoubleStream wide = DoubleStream.iterate(0, i -> i <= steps, i -> i + 1)
                .map(i -> BELOW * lowest * StrictMath.exp(WIDE * i));
        return DoubleStream.concat(wide, all.stream().flatMapToDouble(Scan::near))
                .sorted()
                .distinct()
                .toArray();
    }

    private static DoubleStream near(Resonance peak) {
        return DoubleStream.iterate(0, i -> i + 1)
                .map(i -> peak.damping() * StrictMath.sinh(CLOSE * i))
                .takeWhile(aside -> aside < AROUND)
                .flatMap(aside -> DoubleStream.of(1 - aside, 1 + aside))
                .map(share -> share * peak.frequency());
    }
}
