package setwright.quantity;

/** What is measured, with the one unit that the program computes in. */
public enum Dimension {
    LENGTH("mm"),
    ANGLE("rad"),
    TIME("s"),
    FORCE("N"),
    TORQUE("N·mm"),
    POWER("W"),
    STRESS("N/mm²"),
    TURNING("rad/s"),
    SPEED("mm/s"),
    MASS("kg"),
    DENSITY("kg/mm³"),
    STIFFNESS("N/mm"),
    VOLUME_RATE("mm³/s"),
    AREA("mm²"),
    FREQUENCY("Hz"),
    TEMPERATURE_STEP("K"),
    EXPANSION("1/K"),
    RATIO("");

    private final String inside;

    Dimension(String inside) {
        this.inside = inside;
    }

    /** The unit in which every value of this dimension is held and computed. */
    public String inside() {
        return inside;
    }
}
