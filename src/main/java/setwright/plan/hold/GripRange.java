package setwright.plan.hold;

/**
 * How hard a set-up may be held: from what its heaviest operation asks to what the holding and the part stand.
 *
 * @param now what is asked now, in the unit of the measure: force of a vise in N, torque at a nut in N·mm
 * @param least that holds every operation with the factors that are asked; infinite where no grip does
 * @param asks id of the operation that asks for it
 * @param most that nothing speaks against
 * @param because what stands against more, in words
 */
public record GripRange(String setUp, By by, double now, double least, String asks, double most, String because) {
    /** What the numbers are. */
    public enum By {
        /** Force of the moving jaw. */
        VISE,
        /** Torque at every nut. */
        NUT
    }

    /** Whether what holds is more than what the part or the holding stands. */
    public boolean crosses() {
        return least > most;
    }
}
