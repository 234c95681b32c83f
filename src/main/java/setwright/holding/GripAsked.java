package setwright.holding;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Vise;

/** How hard a vise is asked to be done up, in words that a hand understands. */
public enum GripAsked {
    SNUG("snug", 5000),
    FIRM("firm", 15000),
    HARD("hard", 25000);

    /** What a bad day leaves of the grip. */
    public static final double PESSIMISTIC_SHARE = 0.8;

    /** The rule for a vise whose own figures nobody knows. */
    public static final Table USUAL = new Table(
            "grip of the vise",
            "on a 6 in vise snug 5, firm 15, hard 25 kN; half on a 4 in vise, in proportion between and below; no more on"
                    + " a larger one; pessimistic 0.8 of it",
            Unit.KN,
            Source.of("common practice"));

    private static final double SIX_INCH = 6 * 25.4;
    private static final double FOUR_INCH = 4 * 25.4;

    private final String word;
    private final double onSixInch;

    GripAsked(String word, double onSixInch) {
        this.word = word;
        this.onSixInch = onSixInch;
    }

    /** As said at the vise, for instance {@code firm}. */
    public String word() {
        return word;
    }

    /** What the moving jaw of a vise is expected to press with, N. */
    public double force(Vise vise) {
        return switch (this) {
            case SNUG -> vise.snug().inside();
            case FIRM -> vise.firm().inside();
            case HARD -> vise.hard().inside();
        };
    }

    /** What a vise with jaws that wide (mm) is usually expected to press with, N. */
    public double usual(double jawWidth) {
        return onSixInch * size(jawWidth);
    }

    /** The force of {@link #usual} for an outlook, as a worked value. */
    public Worked worked(Value jawWidth, Outlook outlook) {
        return USUAL.of(word + ", " + outlook.word(), usual(jawWidth.inside()) * share(outlook), jawWidth);
    }

    /** What of the force asked is counted on. */
    public static double share(Outlook outlook) {
        return switch (outlook) {
            case EXPECTED -> 1;
            case PESSIMISTIC -> PESSIMISTIC_SHARE;
        };
    }

    private static double size(double jawWidth) {
        if (!(jawWidth > 0)) {
            throw new IllegalArgumentException("A jaw is wider than nothing, not " + jawWidth + " mm.");
        }
        if (jawWidth < FOUR_INCH) {
            return 0.5 * jawWidth / FOUR_INCH;
        }
        return Math.min(1, 0.5 + 0.5 * (jawWidth - FOUR_INCH) / (SIX_INCH - FOUR_INCH));
    }
}
