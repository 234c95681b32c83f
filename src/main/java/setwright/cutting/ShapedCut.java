package setwright.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * A milling cut whose edges need not stand at one radius, as cuts of its slices.
 *
 * @param whole the cut at the widest, over the whole depth
 * @param slices that have something to cut
 */
public record ShapedCut(MillingCut whole, List<Slice> slices) {
    public ShapedCut {
        slices = List.copyOf(slices);
    }

    /**
     * A slice of the edges.
     *
     * @param cut of the slice alone
     * @param lag of its bottom behind the tip, rad
     */
    public record Slice(MillingCut cut, double lag) {}

    /** How the stock stands at the side of the cut. */
    public enum Side {
        /** Upright: a wall, an edge of the blank, the flank of a slot. */
        UPRIGHT,
        /** As the same cutter left it in the lane before. */
        LANE_BEFORE
    }

    /**
     * The teeth on a shape.
     *
     * @param teeth z
     * @param helix at the widest, rad
     */
    public record Teeth(int teeth, double helix) {}

    /** A cut with a cutter whose edges stand at one radius. */
    public static ShapedCut of(MillingCut cut) {
        return new ShapedCut(cut, List.of(new Slice(cut, 0)));
    }

    /** What is left of a slot's head beside the neck that is already open: both sides at once. */
    public static ShapedCut besideNeck(MillingCutter cutter, double neck, double depth, double feedPerTooth) {
        double side = (cutter.diameter() - neck) / 2;
        if (side <= 0) {
            return of(MillingCut.of(
                    cutter, Direction.SLOT, new MillingCut.Section(cutter.diameter(), depth), feedPerTooth));
        }
        var section = new MillingCut.Section(side, depth);
        MillingCut in = MillingCut.of(cutter, Direction.CONVENTIONAL, section, feedPerTooth);
        MillingCut out = MillingCut.of(cutter, Direction.CLIMB, section, feedPerTooth);
        MillingCut whole = new MillingCut(cutter, new Engagement(0, Math.PI), depth, feedPerTooth);
        return new ShapedCut(whole, List.of(new Slice(in, 0), new Slice(out, 0)));
    }

    /**
     * A cut with a cutter of any shape.
     *
     * @param section its width at the widest of the edges that cut
     */
    public static ShapedCut of(
            EdgeShape shape,
            Teeth teeth,
            Direction direction,
            MillingCut.Section section,
            Side side,
            double feedPerTooth) {
        double widest = shape.widest(section.depth());
        List<Slice> found = new ArrayList<>();
        double lead = Math.PI / 2;
        for (EdgeShape.Part part : shape.parts(section.depth())) {
            double width = direction == Direction.SLOT ? 2 * part.radius() : width(part, section, side, widest);
            if (width > 1e-6) {
                lead = Math.min(lead, Math.abs(part.lead()));
                double local = StrictMath.atan(StrictMath.tan(teeth.helix()) * part.radius() / widest);
                var cutter = new MillingCutter(2 * part.radius(), teeth.teeth(), local, part.lead());
                MillingCut cut = new MillingCut(
                        cutter,
                        Engagement.of(
                                width >= 2 * part.radius() ? Direction.SLOT : direction, width, cutter.diameter()),
                        part.height(),
                        feedPerTooth);
                found.add(new Slice(cut, part.bottom() * StrictMath.tan(teeth.helix()) / widest));
            }
        }
        var cutter = new MillingCutter(2 * widest, teeth.teeth(), teeth.helix(), lead);
        return new ShapedCut(MillingCut.of(cutter, direction, section, feedPerTooth), found);
    }

    private static double width(EdgeShape.Part part, MillingCut.Section section, Side side, double widest) {
        double left = side == Side.UPRIGHT ? section.width() - widest + part.radius() : section.width();
        return Math.min(left, 2 * part.radius());
    }

    /** The largest chip of any slice, mm. */
    public double largestChip() {
        return slices.stream()
                .mapToDouble(slice -> slice.cut().largestChip())
                .max()
                .orElse(0);
    }

    /** Material removed in a turn, mm³. */
    public double removedPerTurn() {
        return slices.stream()
                .mapToDouble(slice -> slice.cut().removedPerTurn())
                .sum();
    }
}
