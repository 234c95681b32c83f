package setwright.geometry;

import setwright.geometry.plane.Gap;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/**
 * The least clearance of one section of the tool with one body along a path.
 *
 * @param clearance the exact distance in mm; where they touch, less the smaller of the two overlaps
 * @param sideGap how far they clear sideways there; negative by the overlap in plan
 * @param heightGap how far they clear in height there; negative by the overlap in height
 */
public record Nearest(double clearance, double sideGap, double heightGap, Section section, Body body, Place place) {

    /** True where the two touch or overlap. */
    public boolean touches() {
        return clearance <= Gap.MEETS;
    }

    /** The clearance with its gaps; {@code origin} says which operation they belong to. */
    public Worked worked(String origin) {
        return Clearance.LEAST.of(
                clearance,
                section.name() + " and " + body.name(),
                Given.of("side gap", sideGap, Unit.MM, origin),
                Given.of("height gap", heightGap, Unit.MM, origin));
    }

    /**
     * Where it is tightest.
     *
     * @param at the place on the body; inside both where they overlap
     * @param toolPoint where the tool point then is
     * @param toward the direction from the section to the body, of length 1; where they overlap it points against the
     *     shortest way out
     * @param move which move of the path, from 0
     */
    public record Place(Point3 at, Point3 toolPoint, Point3 toward, int move) {}
}
