package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Power, torque and the force that goes with them: W, N·mm, N, rad/s, mm/s. */
public final class CuttingPower {
    private static final Symbol POWER_KW = symbol("P", "power at the cutter", Unit.KW, 0.001, 100);
    private static final Symbol TORQUE_NM = symbol("M", "torque", Unit.N_M, 0.01, 2000);
    private static final Symbol TURNS = symbol("n", "spindle speed", Unit.RPM, 10, 30000);

    public static final Formula POWER = new Formula(
            "P = π M n / 30000",
            POWER_KW,
            List.of(TORQUE_NM, TURNS),
            a -> power(a[0], a[1]),
            Source.of("Machinery's Handbook 31st ed. p.1152, Pc = M N / 9550"));

    public static final Formula TORQUE = new Formula(
            "M = 30000 P / (π n)",
            TORQUE_NM,
            List.of(POWER_KW, TURNS),
            a -> torque(a[0], a[1]),
            Source.of("Kalpakjian & Schmid Ex 24.1 p.664"));

    public static final Formula POWER_OF_REMOVAL = new Formula(
            "P = Q kc / 60000",
            POWER_KW,
            List.of(
                    symbol("Q", "removal rate", Unit.CM3_PER_MIN, 0.01, 5000),
                    symbol("kc", "specific cutting force", Unit.N_PER_MM2, 100, 20000)),
            a -> powerOfRemoval(a[0], a[1]),
            Source.of("tool-maker milling catalogue 2021-22, formula page 783"));

    public static final Formula MEAN_TANGENTIAL = new Formula(
            "F = 60000 P / v",
            symbol("F", "mean tangential force", Unit.N, 1, 100000),
            List.of(POWER_KW, symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 1000)),
            a -> tangentialForce(a[0], a[1]),
            Source.of("El-Hofy, Fundamentals of Machining Processes p.189"));

    public static final Formula MOTOR_POWER = new Formula(
            "Pm = P / E",
            symbol("Pm", "power at the motor", Unit.KW, 0.001, 150),
            List.of(POWER_KW, symbol("E", "efficiency", Unit.NONE, 0.4, 1)),
            a -> motorPower(a[0], a[1]),
            Source.of("P.C. Sharma Ex 15.1 p.597; Machinery's Handbook 31st ed. p.1152"));

    private CuttingPower() {}

    /** W from N·mm and rad/s. */
    public static double power(double torque, double spindleSpeed) {
        return torque * spindleSpeed / 1000;
    }

    /** N·mm from W and rad/s. */
    public static double torque(double power, double spindleSpeed) {
        return 1000 * power / spindleSpeed;
    }

    /** W from mm³/s and N/mm². */
    public static double powerOfRemoval(double removalRate, double specificForce) {
        return removalRate * specificForce / 1000;
    }

    /** N from W and mm/s. */
    public static double tangentialForce(double power, double cuttingSpeed) {
        return 1000 * power / cuttingSpeed;
    }

    public static double motorPower(double powerAtCutter, double efficiency) {
        return powerAtCutter / efficiency;
    }
}
