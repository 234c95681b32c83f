package setwright.cutting;

/**
 * One milling cut.
 *
 * @param axialDepth ap along the cutter's axis, mm
 * @param feedPerTooth fz along the feed, mm
 */
public record MillingCut(MillingCutter cutter, Engagement engagement, double axialDepth, double feedPerTooth) {
    public MillingCut {
        if (!(axialDepth > 0 && feedPerTooth > 0) || Double.isInfinite(axialDepth) || Double.isInfinite(feedPerTooth)) {
            throw new IllegalArgumentException("A milling cut has a depth and a feed per tooth above 0 mm, not "
                    + axialDepth + " and " + feedPerTooth + ".");
        }
    }

    /** A cut of the given width that leaves a wall, or a slot. */
    public static MillingCut of(MillingCutter cutter, Direction direction, Section section, double feedPerTooth) {
        return new MillingCut(
                cutter, Engagement.of(direction, section.width(), cutter.diameter()), section.depth(), feedPerTooth);
    }

    /** A facing cut; the offset is that of {@link Engagement#facing}. */
    public static MillingCut facing(MillingCutter cutter, double offset, Section section, double feedPerTooth) {
        return new MillingCut(
                cutter, Engagement.facing(section.width(), offset, cutter.diameter()), section.depth(), feedPerTooth);
    }

    /**
     * What stands in the way of the cutter.
     *
     * @param width ae across the feed, mm
     * @param depth ap along the axis, mm
     */
    public record Section(double width, double depth) {}

    public MillingCut withDepth(double depth) {
        return new MillingCut(cutter, engagement, depth, feedPerTooth);
    }

    public MillingCut withFeedPerTooth(double feed) {
        return new MillingCut(cutter, engagement, axialDepth, feed);
    }

    /** The chip thickness fz cos λ sin φ where a tooth stands at an angle, mm. */
    public double chip(double angle) {
        return Math.max(0, feedPerTooth * StrictMath.cos(cutter.leadAngle()) * StrictMath.sin(angle));
    }

    public double largestChip() {
        double nearest = Math.min(Math.max(Math.PI / 2, engagement.start()), engagement.exit());
        return chip(nearest);
    }

    /** The mean chip thickness over the engaged arc, mm. */
    public double meanChip() {
        return ChipThickness.meanOverArc(
                feedPerTooth * StrictMath.cos(cutter.leadAngle()), engagement.start(), engagement.exit());
    }

    /** The width of cut, mm. */
    public double width() {
        return engagement.width(cutter.diameter());
    }

    /** The mean number of teeth in the cut: z φ / 2π. */
    public double teethEngaged() {
        return engagement.arc() / cutter.pitch();
    }

    /** Material removed in a turn, mm³. */
    public double removedPerTurn() {
        return width() * axialDepth * feedPerTooth * cutter.teeth();
    }
}
