package setwright.paint;

/** On what a drawing is put: warm paper by day, the same sheet by night, or black on white as it prints. */
public enum Look {
    LIGHT,
    DARK,
    PRINT;

    Colours colours() {
        return switch (this) {
            case LIGHT -> Colours.LIGHT;
            case DARK -> Colours.DARK;
            case PRINT -> Colours.PRINT;
        };
    }
}
