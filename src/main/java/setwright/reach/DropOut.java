package setwright.reach;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * How far a tool has to come down before it is free of the spindle or holder; millimetres.
 *
 * @param comesOut what comes down, in the trade's words
 */
public record DropOut(Kind kind, String comesOut, double length, Source source) {
    private static final Source R8 = Source.of("from memory: R8 shank, about 4.0 in overall");
    private static final Source STEEP = Source.of("from memory: DIN 2080 shank from the gauge line to its end");
    private static final Source MORSE = Source.of("from memory: ISO 296 taper shank with tang, overall");
    private static final Source GRIP = Source.of("common practice: what is gripped comes out by the length gripped");

    /** A chuck is 10 to 15 mm longer open than closed (common practice). */
    private static final double CHUCK_OPENS = 12;

    /** The rule under which a drop-out is printed; the deciding row is what comes out. */
    public static final Table LENGTH = new Table(
            "drop-out room",
            "length of the shank, taper or grip that comes down below the nose",
            Unit.MM,
            Source.of("common practice"));

    public enum Kind {
        R8_SHANK,
        R8_COLLET,
        STEEP_TAPER,
        MORSE_TAPER,
        COLLET_CHUCK,
        SET_SCREW_HOLDER,
        DRILL_CHUCK
    }

    /** A holder, chuck or arbor on an R8 shank. */
    public static DropOut r8Shank() {
        return new DropOut(Kind.R8_SHANK, "R8 shank", 102, R8);
    }

    /** A cutter out of an R8 collet that stays in the spindle: its grip only. */
    public static DropOut r8Collet(double grip) {
        return new DropOut(Kind.R8_COLLET, "grip in the R8 collet", grip, GRIP);
    }

    /** A 7:24 taper: no. 30, 40, 45 or 50. */
    public static DropOut steepTaper(int number) {
        double length = switch (number) {
            case 30 -> 68;
            case 40 -> 93;
            case 45 -> 107;
            case 50 -> 127;
            default ->
                throw new IllegalArgumentException(
                        "The 7:24 tapers listed are no. 30, 40, 45 and 50, not " + number + ".");
        };
        return new DropOut(Kind.STEEP_TAPER, "no. " + number + " taper", length, STEEP);
    }

    /** A Morse taper shank, 0 to 6; it also wants its drift or drawbar. */
    public static DropOut morse(int number) {
        double length = switch (number) {
            case 0 -> 59.5;
            case 1 -> 65.5;
            case 2 -> 80;
            case 3 -> 99;
            case 4 -> 124;
            case 5 -> 156;
            case 6 -> 218;
            default -> throw new IllegalArgumentException("Morse tapers run from 0 to 6, not " + number + ".");
        };
        return new DropOut(Kind.MORSE_TAPER, "Morse taper " + number, length, MORSE);
    }

    /** A cutter out of a collet chuck: its shank as far as it is in. */
    public static DropOut colletChuck(double shankIn) {
        return new DropOut(Kind.COLLET_CHUCK, "shank in the collet chuck", shankIn, GRIP);
    }

    /** A cutter out of a set screw holder: its shank as far as it is in. */
    public static DropOut setScrewHolder(double shankIn) {
        return new DropOut(Kind.SET_SCREW_HOLDER, "shank in the holder", shankIn, GRIP);
    }

    /** A drill out of its chuck: its grip in the jaws, and what the chuck grows as it is opened. */
    public static DropOut drillChuck(double grip) {
        return new DropOut(Kind.DRILL_CHUCK, "grip in the chuck jaws, opened", grip + CHUCK_OPENS, GRIP);
    }
}
