package setwright.rigidity;

/**
 * How far a tool gives for each newton, by what gives, mm/N.
 *
 * @param tool the tool itself
 * @param clampShift the clamp, sideways
 * @param clampTilt the clamp, tilting
 * @param machine all behind the holder
 * @param holder the holder's body, and the tilt of its taper
 */
public record Compliance(double tool, double clampShift, double clampTilt, double machine, double holder) {
    /** In a holder that does not give. */
    public Compliance(double tool, double clampShift, double clampTilt, double machine) {
        this(tool, clampShift, clampTilt, machine, 0);
    }

    public double total() {
        return tool + clampShift + clampTilt + machine + holder;
    }

    /** N/mm. */
    public double stiffness() {
        return 1 / total();
    }

    public double of(Part part) {
        return switch (part) {
            case TOOL -> tool;
            case CLAMP_SHIFT -> clampShift;
            case CLAMP_TILT -> clampTilt;
            case HOLDER -> holder;
            case MACHINE -> machine;
        };
    }

    /** What gives most; of equals the nearest to the cut. */
    public Part governing() {
        Part most = Part.TOOL;
        for (Part part : Part.values()) {
            most = of(part) > of(most) ? part : most;
        }
        return most;
    }

    /** What can give, from the cut to the floor. */
    public enum Part {
        TOOL("tool"),
        CLAMP_SHIFT("clamp, sideways"),
        CLAMP_TILT("clamp, tilting"),
        HOLDER("holder and the tilt of its taper"),
        MACHINE("machine and taper");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        /** As printed. */
        public String words() {
            return words;
        }
    }
}
