package setwright.paint;

import java.awt.Color;
import setwright.drawing.Fill;

/**
 * The colours of a look.
 *
 * @param ink thick lines and words
 * @param pencil thin lines
 * @param faint lines that only lead the eye
 * @param iron table, vise, quill
 * @param steel jaws, parallels
 * @param stock the part
 * @param gone what is taken from it
 * @param tool the cutter
 * @param holder what holds it
 */
record Colours(
        Color paper,
        Color ink,
        Color pencil,
        Color faint,
        Color iron,
        Color steel,
        Color stock,
        Color gone,
        Color tool,
        Color holder) {
    static final Colours LIGHT =
            of(0xFAF8F1, 0x1F2937, 0x67625A, 0xB9B2A2, 0xECE8DC, 0xDEE0DD, 0xF0E2C2, 0xFBF5E6, 0xCBD6DF, 0xE2E5E4);
    static final Colours DARK =
            of(0x23282D, 0xE9E4D8, 0xA69F92, 0x5A616A, 0x2B3137, 0x39424B, 0x4A4436, 0x343229, 0x4B5D6C, 0x343C44);
    static final Colours PRINT =
            of(0xFFFFFF, 0x000000, 0x333333, 0x999999, 0xFFFFFF, 0xFFFFFF, 0xFFFFFF, 0xFFFFFF, 0xE6E6E6, 0xF4F4F4);

    private static Colours of(int... rgb) {
        return new Colours(
                new Color(rgb[0]),
                new Color(rgb[1]),
                new Color(rgb[2]),
                new Color(rgb[3]),
                new Color(rgb[4]),
                new Color(rgb[5]),
                new Color(rgb[6]),
                new Color(rgb[7]),
                new Color(rgb[8]),
                new Color(rgb[9]));
    }

    Color of(Fill fill) {
        return switch (fill) {
            case TABLE, VISE, QUILL, NOSE -> iron;
            case JAW, PARALLEL, OTHER_FIXTURE -> steel;
            case PART -> stock;
            case CUT_AWAY -> gone;
            case OPEN -> paper;
            case CUTTER -> tool;
            case SHANK, HOLDER -> holder;
        };
    }
}
