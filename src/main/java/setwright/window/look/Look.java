package setwright.window.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.roboto.FlatRobotoFont;
import java.awt.Font;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/** How the window looks: drawing paper by day, the same sheet by night, or black on white as it prints. */
public enum Look {
    PAPER("Paper"),
    NIGHT("Night"),
    PRINT("As printed");

    private static final String KEY = "Setwright.look";
    private static final String FONT = "defaultFont";
    private static final int BODY = 13;

    private final String words;

    Look(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The look that is on. */
    public static Look now() {
        return UIManager.get(KEY) instanceof Look look ? look : PAPER;
    }

    /** The look of that name; paper where there is none. */
    public static Look named(String name) {
        return java.util.Arrays.stream(values())
                .filter(look -> look.name().equals(name))
                .findFirst()
                .orElse(PAPER);
    }

    /** The one after it; the first follows the last. */
    public Look next() {
        return values()[(ordinal() + 1) % values().length];
    }

    /** The same for drawings. */
    public setwright.paint.Look ofDrawings() {
        return switch (this) {
            case PAPER -> setwright.paint.Look.LIGHT;
            case NIGHT -> setwright.paint.Look.DARK;
            case PRINT -> setwright.paint.Look.PRINT;
        };
    }

    public Palette palette() {
        return switch (this) {
            case PAPER -> Palette.PAPER;
            case NIGHT -> Palette.NIGHT;
            case PRINT -> Palette.PRINT;
        };
    }

    /** Puts this look on every window that is opened from now on, and on those that are open. */
    public void putOn() {
        FlatRobotoFont.install();
        FlatLaf.setPreferredFontFamily(FlatRobotoFont.FAMILY);
        FlatLaf.setGlobalExtraDefaults(defaults(palette()));
        if (this == NIGHT) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put(KEY, this);
        readable();
        FlatLaf.updateUI();
    }

    /** Letters as large as the desktop has them, but no smaller than one can read at a bench. */
    private static void readable() {
        Font font = UIManager.getFont(FONT);
        if (font != null && font.getSize() < BODY) {
            UIManager.put(FONT, new FontUIResource(font.deriveFont((float) BODY)));
        }
    }

    private static Map<String, String> defaults(Palette palette) {
        return Map.ofEntries(
                Map.entry("@background", palette.hex(palette.paper())),
                Map.entry("@foreground", palette.hex(palette.ink())),
                Map.entry("@componentBackground", palette.hex(palette.sheet())),
                Map.entry("@menuBackground", palette.hex(palette.paper())),
                Map.entry("@accentColor", palette.hex(palette.accent())),
                Map.entry("Component.arc", "0"),
                Map.entry("Button.arc", "0"),
                Map.entry("TextComponent.arc", "0"),
                Map.entry("Component.focusWidth", "1"),
                Map.entry("Component.innerFocusWidth", "0"),
                Map.entry("Component.borderColor", palette.hex(palette.rule())),
                Map.entry("ScrollBar.width", "12"),
                Map.entry("ScrollBar.thumbArc", "0"),
                Map.entry("MenuItem.minimumWidth", "200"),
                Map.entry("MenuItem.margin", "6,6,6,6"),
                Map.entry("TitlePane.unifiedBackground", "true"),
                Map.entry("ToolTip.background", palette.hex(palette.sheet())));
    }
}
