package setwright.window.state;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The nine fields of the quick check, in the order in which they stand. */
public enum QuickField {
    MACHINE("Machine"),
    HELD("How held"),
    MATERIAL("Material"),
    HEIGHT("Height above table or jaws"),
    CUTTER("Cutter"),
    HOLDER("Holder"),
    STICK_OUT("Stick-out"),
    OPERATION("Operation"),
    CUT("Depth x width");

    private final String words;

    QuickField(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As settings and views name it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the pencil may fill it. */
    public boolean plannable() {
        return switch (this) {
            case HOLDER, STICK_OUT -> true;
            case MACHINE, HELD, MATERIAL, HEIGHT, CUTTER, OPERATION, CUT -> false;
        };
    }

    public static Optional<QuickField> of(String key) {
        return Arrays.stream(values()).filter(field -> field.key().equals(key)).findFirst();
    }
}
