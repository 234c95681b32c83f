package setwright.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What stands on the table, as named heights over it: vise bed, parallels, part, jaw top. Every call gives a new stack.
 *
 * @param levels in the order in which they were named; the table is the first
 */
public record HeightStack(List<Level> levels) {
    public static final String TABLE = "table";

    public HeightStack {
        levels = List.copyOf(levels);
        if (levels.stream().map(Level::name).distinct().count() < levels.size()) {
            throw new IllegalArgumentException("A height stack names each level once: " + names(levels) + ".");
        }
    }

    public static HeightStack onTable() {
        return new HeightStack(List.of(new Level(TABLE, 0)));
    }

    /** A further level, above the one that was named last. */
    public HeightStack then(String name, double rise) {
        return above(levels.get(levels.size() - 1).name(), name, rise);
    }

    /** A further level, above (or below) a named one. */
    public HeightStack above(String below, String name, double rise) {
        return with(List.of(new Level(name, height(below) + rise)));
    }

    /** The levels of a tool whose point stands at a height. */
    public HeightStack with(ToolStack tool, double point) {
        return with(tool.levels(point));
    }

    private HeightStack with(List<Level> more) {
        List<Level> all = new ArrayList<>(levels);
        all.addAll(more);
        return new HeightStack(all);
    }

    /** @throws IllegalArgumentException where no level has that name */
    public double height(String name) {
        return levels.stream()
                .filter(level -> level.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The height stack has no level called " + name + "; it has " + names(levels) + "."))
                .height();
    }

    public double highest() {
        return rising().get(levels.size() - 1).height();
    }

    /** From the lowest to the highest; of two at one height the one named first is the lower. */
    public List<Level> rising() {
        return levels.stream().sorted(Comparator.comparingDouble(Level::height)).toList();
    }

    private static String names(List<Level> levels) {
        return String.join(", ", levels.stream().map(Level::name).toList());
    }
}
