package setwright.window;

import java.nio.file.Path;
import java.util.Locale;

/** Where a person's own data is kept on this machine. */
final class Folders {
    private static final String NAME = "setwright";

    private Folders() {}

    static Path data() {
        String home = System.getProperty("user.home", ".");
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return Path.of(asked("APPDATA", Path.of(home, "AppData", "Roaming").toString()), NAME);
        }
        if (system.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", NAME);
        }
        return Path.of(asked("XDG_DATA_HOME", Path.of(home, ".local", "share").toString()), NAME);
    }

    private static String asked(String variable, String otherwise) {
        String set = System.getenv(variable);
        return set == null || set.isBlank() ? otherwise : set;
    }
}
