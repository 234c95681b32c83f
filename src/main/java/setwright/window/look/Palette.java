package setwright.window.look;

import java.awt.Color;
import java.util.Locale;

/**
 * The colours of a look.
 *
 * @param paper ground of the window
 * @param sheet ground of cards and drawings
 * @param ink what is written
 * @param pencil what may be rubbed out, and what is said beside
 * @param rule thin lines between things
 * @param chosen ground of what is chosen
 * @param accent where the keyboard is
 * @param stop the filled square; its shape and word say the same
 */
public record Palette(
        Color paper, Color sheet, Color ink, Color pencil, Color rule, Color chosen, Color accent, Color stop) {
    static final Palette PAPER = of(0xEFEBDF, 0xFAF8F1, 0x22262B, 0x67625A, 0xCBC3B1, 0xE6E0CF, 0x2F4B66, 0xA0331C);
    static final Palette NIGHT = of(0x1C2024, 0x23282D, 0xE9E4D8, 0xA69F92, 0x434A52, 0x323941, 0x9DB8D2, 0xE08A73);
    static final Palette PRINT = of(0xFFFFFF, 0xFFFFFF, 0x000000, 0x555555, 0xBBBBBB, 0xEEEEEE, 0x000000, 0x000000);

    private static Palette of(int... rgb) {
        return new Palette(
                new Color(rgb[0]),
                new Color(rgb[1]),
                new Color(rgb[2]),
                new Color(rgb[3]),
                new Color(rgb[4]),
                new Color(rgb[5]),
                new Color(rgb[6]),
                new Color(rgb[7]));
    }

    /** The colours of the look that is on. */
    public static Palette now() {
        return Look.now().palette();
    }

    String hex(Color color) {
        return String.format(Locale.ROOT, "#%06x", color.getRGB() & 0xFFFFFF);
    }
}
