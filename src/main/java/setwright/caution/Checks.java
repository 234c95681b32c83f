package setwright.caution;

import java.util.List;
import java.util.stream.Stream;

/** Every check of the program, in the order in which their cautions are listed. */
public final class Checks {
    public static final List<Check> ALL = Stream.of(RoomChecks.ALL, ToolChecks.ALL, GripChecks.ALL, PlaceChecks.ALL)
            .flatMap(List::stream)
            .toList();

    private Checks() {}

    /** Every slug, in the order of {@link #ALL}. */
    public static List<String> slugs() {
        return ALL.stream().map(Check::slug).toList();
    }
}
