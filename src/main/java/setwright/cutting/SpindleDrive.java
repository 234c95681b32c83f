package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import java.util.Optional;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.GearRange;
import setwright.shop.Machine;

/**
 * What a machine's drive has at the cutter at a spindle speed. Steps of pulleys and gears give the whole power at each
 * speed; a variable drive gives it from its base speed on, below that the torque of the base speed (common practice).
 */
public record SpindleDrive(Machine machine) {
    private static final Symbol MOTOR = symbol("Pm", "power of the motor", Unit.KW, 0.1, 50);
    private static final Symbol EFFICIENCY = symbol("E", "efficiency", Unit.NONE, 0.4, 1);
    private static final Symbol BASE =
            symbol("nb", "speed from which the drive has its whole power", Unit.RPM, 50, 3000);
    private static final Symbol TURNS = symbol("n", "spindle speed", Unit.RPM, 10, 6000);
    private static final Source CURVE = Source.of(
            "common practice: constant torque below the base speed of a variable drive, constant power above it");

    public static final Formula POWER = new Formula(
            "P = E Pm min(1, n / nb)",
            symbol("P", "available power at the cutter", Unit.KW, 0.001, 50),
            List.of(MOTOR, EFFICIENCY, TURNS, BASE),
            a -> power(a[0] * a[1], a[2], a[3]),
            CURVE);

    public static final Formula TORQUE = new Formula(
            "M = 30000 E Pm / (π max(n, nb))",
            symbol("M", "available torque at the cutter", Unit.N_M, 0.1, 10000),
            List.of(MOTOR, EFFICIENCY, TURNS, BASE),
            a -> torque(a[0] * a[1], a[2], a[3]),
            CURVE);

    /** What a V-belt carries at a moment, in ratings of its motor (from memory). */
    public static final double BELT_AT_A_MOMENT = 1.5;

    /** Of the fastest speed of a range, from which on a drive that nobody described has its whole power (common practice). */
    private static final double USUAL_BASE = 0.5;

    /** W. */
    public static double power(double whole, double speed, double base) {
        return whole * Math.min(1, speed / base);
    }

    /** N·mm. */
    public static double torque(double whole, double speed, double base) {
        return CuttingPower.torque(whole, Math.max(speed, base));
    }

    /** The whole power at the cutter, W. */
    public double whole() {
        return machine.power().inside() * machine.efficiency().inside();
    }

    /** Power at the cutter at a spindle speed, W. */
    public double powerAt(double speed) {
        return speed > 0 ? power(whole(), speed, base(speed).inside()) : 0;
    }

    /** Torque at the cutter at a spindle speed above 0, N·mm. */
    public double torqueAt(double speed) {
        return torque(whole(), speed, base(speed).inside());
    }

    public Worked powerAt(Value speed) {
        return POWER.of(motor(), efficiency(), speed, base(speed.inside()));
    }

    public Worked torqueAt(Value speed) {
        return TORQUE.of(motor(), efficiency(), speed, base(speed.inside()));
    }

    /** Whether it falls off below a base speed. */
    public boolean variable() {
        return machine.steps().isEmpty();
    }

    /** Whether a belt passes every blow of a tooth on to the motor. */
    public boolean belted() {
        return !machine.steps().isEmpty();
    }

    /** The range of gears or belts in which a speed lies; of two the faster, which carries less torque. */
    public Optional<GearRange> rangeAt(double speed) {
        List<GearRange> ranges = machine.ranges();
        return ranges == null
                ? Optional.empty()
                : ranges.stream()
                        .filter(range -> speed >= range.speedLeast().inside() * (1 - 1e-9)
                                && speed <= range.speedGreatest().inside() * (1 + 1e-9))
                        .reduce((slow, fast) -> fast);
    }

    private Given motor() {
        return Given.of("power of the motor", machine.power().inside(), Unit.KW, "shop/" + machine.id() + "/power");
    }

    private Given efficiency() {
        return Given.of("efficiency", machine.efficiency().inside(), Unit.NONE, "shop/" + machine.id() + "/efficiency");
    }

    private Given base(double speed) {
        String name = BASE.name();
        if (!variable()) {
            return Given.of(name, Math.max(speed, 1e-6), Unit.RPM, "steps: the whole power at each");
        }
        Optional<GearRange> range = rangeAt(speed);
        Optional<Typed<?>> own = range.map(GearRange::fullPowerFrom);
        if (own.isPresent()) {
            return Given.of(name, own.get().inside(), Unit.RPM, "shop/" + machine.id() + "/ranges");
        }
        Typed<?> machineGreatest = machine.speedGreatest();
        double greatest = range.map(one -> one.speedGreatest().inside())
                .orElse(machineGreatest == null ? speed : machineGreatest.inside());
        return Given.of(name, USUAL_BASE * greatest, Unit.RPM, "common practice: half the fastest of its range");
    }
}
