package setwright.rigidity.stability;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** How many waves of ringing fit between one tooth and the next: what decides whether a speed can be aimed at. */
public final class Waves {
    public static final Formula BETWEEN_TEETH = new Formula(
            "W = 60 f / (N n)",
            symbol("W", "waves between teeth", Unit.NONE, 0, 1000),
            List.of(
                    symbol("f", "natural frequency", Unit.HZ, 50, 10000),
                    symbol("N", "teeth", Unit.NONE, 1, 12),
                    symbol("n", "spindle speed", Unit.RPM, 10, 30000)),
            v -> between(v[0], v[1], v[2]),
            Source.of("computed: the definition"));

    /** Above, the lobes are so crowded that no speed can be aimed at. */
    public static final double MOST_TO_AIM = 5;

    private Waves() {}

    /**
     * @param frequency Hz
     * @param speed rad/s
     */
    public static double between(double frequency, double teeth, double speed) {
        return 2 * Math.PI * frequency / (teeth * speed);
    }
}
