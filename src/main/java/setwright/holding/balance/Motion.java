package setwright.holding.balance;

/**
 * The motion with which a grip gives way, scaled so that the contact that gives first slips one millimetre.
 *
 * @param translation of the centre of the contacts, mm
 * @param rotation about that centre, rad
 */
public record Motion(Kind kind, Vector translation, Vector rotation) {
    private static final double AS_MUCH = 1 - 1e-6;

    /** A motion in a word. */
    public enum Kind {
        LIFTS("lifts"),
        SLIDES("slides"),
        TIPS("tips"),
        TURNS("turns");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Names the motion: what moves a contact at that reach from the centre more, translation or rotation, gives the word. */
    static Motion of(Vector translation, Vector rotation, double reach) {
        return new Motion(kind(translation, rotation.times(reach)), translation, rotation);
    }

    private static Kind kind(Vector translation, Vector swing) {
        if (swing.length() >= AS_MUCH * translation.length()) {
            return Math.abs(swing.z()) > StrictMath.hypot(swing.x(), swing.y()) ? Kind.TURNS : Kind.TIPS;
        }
        return translation.z() > StrictMath.hypot(translation.x(), translation.y()) ? Kind.LIFTS : Kind.SLIDES;
    }
}
