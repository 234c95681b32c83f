package setwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import setwright.geometry.Single;
import setwright.geometry.Stock;
import setwright.geometry.plane.Point2;

/**
 * Stock cut by an upright plane: across the drawing and height, mm.
 *
 * @param areas where the plane goes through material
 * @param outline edges of the material
 * @param rims edges seen behind the plane: the far rims of holes
 */
record StockSection(List<List<Point2>> areas, List<List<Point2>> outline, List<List<Point2>> rims) {
    /** In how many steps the section of a cone beside its axis is drawn. */
    private static final int STEPS = 8;

    /** The stock as it stands. */
    static StockSection of(Stock stock, Chords chords) {
        return of(levels(stock, chords), z -> material(stock, chords, z));
    }

    /** What was in one stock and is no longer in the other. */
    static StockSection gone(Stock before, Stock after, Chords chords) {
        TreeSet<Double> levels = levels(before, chords);
        levels.addAll(levels(after, chords));
        return of(levels, z -> material(before, chords, z).less(material(after, chords, z)));
    }

    /** The material at a height. */
    private interface Level {
        Spans at(double z);
    }

    private static Spans material(Stock stock, Chords chords, double z) {
        Spans left = chords.of(stock.blank(), z);
        for (Single cut : stock.cuts()) {
            left = left.less(chords.of(cut, z));
        }
        return left;
    }

    private static TreeSet<Double> levels(Stock stock, Chords chords) {
        TreeSet<Double> levels = new TreeSet<>();
        double low = stock.blank().zLow();
        double high = stock.blank().zHigh();
        levels.add(low);
        levels.add(high);
        List<Single> all = new ArrayList<>(stock.cuts());
        all.add(stock.blank());
        for (Single cut : all) {
            int steps = chords.bends(cut) ? STEPS : 1;
            for (int i = 0; i <= steps; i++) {
                double z = cut.zLow() + i * (cut.zHigh() - cut.zLow()) / steps;
                if (z > low && z < high) {
                    levels.add(z);
                }
            }
        }
        return levels;
    }

    private static StockSection of(TreeSet<Double> levels, Level level) {
        List<List<Point2>> areas = new ArrayList<>();
        Set<List<Point2>> outline = new LinkedHashSet<>();
        Set<List<Point2>> rims = new LinkedHashSet<>();
        Spans below = Spans.NONE;
        double foot = Double.NaN;
        for (double z : levels) {
            Spans above = Spans.NONE;
            if (!Double.isNaN(foot) && z - foot > 1e-9) {
                double hair = (z - foot) * 1e-6;
                Spans low = level.at(foot + hair);
                Spans high = level.at(z - hair);
                border(outline, rims, below, low, foot);
                band(areas, outline, new Band(foot, z, low, high));
                above = high;
                below = above;
            }
            foot = z;
        }
        border(outline, rims, below, Spans.NONE, foot);
        return new StockSection(List.copyOf(areas), List.copyOf(outline), List.copyOf(rims));
    }

    /** The spans at foot and top of a band. */
    private record Band(double foot, double top, Spans low, Spans high) {
        boolean evenly() {
            return low.all().size() == high.all().size();
        }
    }

    private static void band(List<List<Point2>> areas, Set<List<Point2>> outline, Band band) {
        int count = band.low().all().size();
        for (int i = 0; i < count; i++) {
            Span low = band.low().all().get(i);
            Span high = band.evenly() ? band.high().all().get(i) : low;
            Point2 a = new Point2(low.low(), band.foot());
            Point2 b = new Point2(low.high(), band.foot());
            Point2 c = new Point2(high.high(), band.top());
            Point2 d = new Point2(high.low(), band.top());
            areas.add(List.of(a, b, c, d));
            outline.add(List.of(a, d));
            outline.add(List.of(b, c));
        }
    }

    private static void border(Set<List<Point2>> outline, Set<List<Point2>> rims, Spans below, Spans above, double z) {
        Spans edge = below.differ(above);
        edge.all().forEach(span -> outline.add(level(span, z)));
        Spans rim = below.whole().differ(above.whole()).less(edge);
        rim.all().forEach(span -> rims.add(level(span, z)));
        if (below.all().isEmpty() || above.all().isEmpty()) {
            return;
        }
        Spans gaps = below.whole().less(below).differ(above.whole().less(above)).less(edge);
        gaps.all().forEach(span -> rims.add(level(span, z)));
    }

    private static List<Point2> level(Span span, double z) {
        return List.of(new Point2(span.low(), z), new Point2(span.high(), z));
    }
}
