package setwright.drawing;

import java.util.List;
import setwright.geometry.plane.Point2;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.rigidity.stability.ZeroOrder.Lobe;

/**
 * A lobe diagram: speed to the right, depth up. Below the line it is quiet; the pass as it is set stands as a point.
 */
public final class LobePlot {
    private static final double POINT = 1.2;
    /** Peaks higher than this many times the smallest depth are cut off. */
    private static final double HIGHEST = 6;

    private final List<Lobe> lobes;
    private final Axes axes;

    private LobePlot(List<Lobe> lobes, double depth) {
        this.lobes = lobes;
        double least = lobes.stream().mapToDouble(Lobe::depth).min().orElse(depth);
        double most = Math.max(1.2 * depth, Double.isInfinite(least) ? depth : HIGHEST * least);
        axes = new Axes(
                new Span(lobes.get(0).speed(), lobes.get(lobes.size() - 1).speed()), new Span(0, most));
    }

    /**
     * Empty without lobes.
     *
     * @param speed that is set, rad/s
     * @param depth of the pass, mm
     */
    public static Drawing of(List<Lobe> lobes, double speed, double depth, Printing printing) {
        return lobes.size() < 2 ? Drawing.EMPTY : new LobePlot(lobes, depth).drawing(speed, depth, printing);
    }

    private Drawing drawing(double speed, double depth, Printing printing) {
        List<Point2> border =
                lobes.stream().map(lobe -> axes.at(lobe.speed(), lobe.depth())).toList();
        Point2 set = axes.at(speed, depth);
        Pen pen = new Pen();
        pen.fill(Fill.PART, axes.closedBelow(border));
        pen.line(LineRole.VISIBLE, border);
        axes.draw(
                pen,
                new Axes.Scale("rev/min", at -> printing.number(Measure.SPINDLE_SPEED, at)),
                new Axes.Scale(
                        "depth, " + Measure.LENGTH.unit(printing.units()).symbol(),
                        at -> printing.number(Measure.LENGTH, at)));
        pen.add(new Mark.Round(LineRole.VISIBLE, null, set, POINT));
        pen.add(new Mark.CallOut(
                set, printing.of(Measure.SPINDLE_SPEED, speed) + ", " + printing.of(Measure.LENGTH, depth)));
        return pen.drawing(Axes.FRAME);
    }
}
