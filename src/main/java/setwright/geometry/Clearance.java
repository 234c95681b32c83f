package setwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The exact clearance between a tool that follows a path and the bodies round it; no points are sampled. Level and
 * upright moves are exact; a slanted move is cut into level stretches, each counted over all the heights it passes, so
 * that the result is never too great and at most {@link Search#STEP} mm too small.
 *
 * <p>A body of revolution about an upright axis is {@code hypot(max(0, side gap), max(0, height gap))} from an upright
 * prism; the side gap is that of the path in plan less the radius. Cones are compared in the upright plane of the
 * nearest places, where both profiles are straight lines.
 */
public final class Clearance {
    public static final Procedure LEAST = new Procedure(
            "least clearance",
            List.of(
                    "side gap: the least distance in plan of the path from the body, less the radii",
                    "height gap: what is between section and body in height along the path",
                    "clearance: the hypotenuse of both, a gap below nought counted as nought",
                    "a cone: in the upright plane of the nearest places, the distance of two straight profiles",
                    "where both gaps are below nought they touch: less the smaller overlap",
                    "the least over all moves and all parts of the body"),
            Unit.MM,
            Source.of("computed: plane and solid geometry"));

    /** Further away than this in mm nothing is looked for. */
    public static final double REACH = 200;

    private Clearance() {}

    /**
     * The least clearance of each section with each body within {@link #REACH}, the tightest first. Which sections are
     * to be kept clear of what, such as only holder and shank of the part, is decided by what is handed in.
     */
    public static List<Nearest> all(ToolStack tool, ToolPath path, List<Body> bodies) {
        List<Nearest> found = new ArrayList<>();
        for (Body body : bodies) {
            Search search = new Search(body, tool.sections());
            search.along(path.moves());
            found.addAll(search.found());
        }
        found.sort(Comparator.comparingDouble(Nearest::clearance));
        return List.copyOf(found);
    }

    /** The tightest place of all; empty where nothing comes within {@link #REACH}. */
    public static Optional<Nearest> nearest(ToolStack tool, ToolPath path, List<Body> bodies) {
        return all(tool, path, bodies).stream().findFirst();
    }
}
