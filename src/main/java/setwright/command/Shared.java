package setwright.command;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import setwright.quantity.UnitSystem;

/** The options that every command takes. */
final class Shared {
    @Option(names = "--help", usageHelp = true, description = "print this and do nothing else")
    private boolean help;

    @Option(names = "--units", paramLabel = "inch|metric", description = "units to print in, and of bare numbers")
    private @Nullable String units;

    @Option(names = "--shop", paramLabel = "FOLDER", description = "folder of the shop's files")
    private @Nullable Path shop;

    /** The units that were asked for; null where none were. */
    @Nullable
    UnitSystem units() {
        if (units == null) {
            return null;
        }
        return switch (units.toLowerCase(Locale.ROOT)) {
            case "inch" -> UnitSystem.INCH;
            case "metric" -> UnitSystem.METRIC;
            default -> throw new Complaint("--units is inch or metric, not '" + units + "'.");
        };
    }

    UnitSystem unitsOr(UnitSystem other) {
        UnitSystem asked = units();
        return asked == null ? other : asked;
    }

    @Nullable
    Path shop() {
        return shop;
    }

    boolean help() {
        return help;
    }
}
