package setwright.caution;

import java.util.List;
import java.util.stream.Stream;

/** Every check of the program, in the order in which their cautions are listed. */
public final class Checks {
    public static final List<Check> ALL = Stream.of(RoomChecks.ALL, ToolChecks.ALL, GripChecks.ALL, PlaceChecks.ALL)
            .flatMap(List::stream)
            .toList();

    private Checks() {}

    /** Slugs of what can go wrong with the grip on the work. */
    public static List<String> ofGrip() {
        return GripChecks.ALL.stream().map(Check::slug).toList();
    }

    /** Slugs of what can touch, and of what does not fit between table and spindle. */
    public static List<String> ofRoom() {
        return RoomChecks.ALL.stream().map(Check::slug).toList();
    }

    /** Slugs of what can go wrong with cutter and holder. */
    public static List<String> ofTools() {
        return ToolChecks.ALL.stream().map(Check::slug).toList();
    }

    /** Every slug, in the order of {@link #ALL}. */
    public static List<String> slugs() {
        return ALL.stream().map(Check::slug).toList();
    }
}
