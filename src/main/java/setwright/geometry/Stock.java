package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/**
 * The part as it stands: the blank, and what was cut from it so far. In a height band a cut counts as gone only where
 * it is gone over the whole band, so that the stock is never shown smaller than it is. Prisms and cylinders are exact;
 * of a cone a band shows the smallest radius.
 */
public final class Stock {
    private final Made<Prism> madeBlank;
    private final List<Made<Single>> madeCuts;
    private final Prism blank;
    private final List<Single> cuts;
    // Worked out when first asked for; the same whoever asks.
    private volatile @Nullable List<Layer> known;

    private Stock(Made<Prism> madeBlank, List<Made<Single>> madeCuts) {
        this.madeBlank = madeBlank;
        this.madeCuts = List.copyOf(madeCuts);
        blank = madeBlank.solid().placed(madeBlank.since());
        cuts = madeCuts.stream().filter(Made::isExact).map(Made::now).toList();
    }

    public static Stock of(Prism blank) {
        return new Stock(new Made<>(blank, Placement.AS_DRAWN), List.of());
    }

    /** A block in the part frame: length along x, depth along y, height along z. */
    public static Stock block(Point3 size) {
        return of(Box.of(Point3.ORIGIN, size).solid());
    }

    /** The stock after something was cut from it, as it lies now. */
    public Stock less(Solid cut) {
        List<Made<Single>> all = new ArrayList<>(madeCuts);
        for (Single part : cut.parts()) {
            all.add(new Made<>(part, Placement.AS_DRAWN));
        }
        return new Stock(madeBlank, all);
    }

    /** The blank as it lies now. */
    public Prism blank() {
        return blank;
    }

    /** The cuts that can be shown exactly as the stock lies now. */
    public List<Single> cuts() {
        return cuts;
    }

    /** The material between two heights in plan; both heights the same: at that height. */
    public Region shadow(double zLow, double zHigh) {
        Region shadow = Region.NONE;
        for (Layer layer : Layer.outermost(layers(new Heights(zLow, zHigh)))) {
            shadow = shadow.plus(layer.prism().region());
        }
        return shadow;
    }

    /** The height of the material's top at a place; none where there is no material. */
    public OptionalDouble heightAt(Point2 place) {
        if (!blank.region().contains(place)) {
            return OptionalDouble.empty();
        }
        List<Heights> gone = new ArrayList<>();
        for (Single cut : cuts) {
            Heights column = cut.column(place);
            if (column != null) {
                gone.add(column);
            }
        }
        double top = fallenTo(blank.zHigh(), gone);
        return top > blank.zLow() + Heights.SAME ? OptionalDouble.of(top) : OptionalDouble.empty();
    }

    /** How low one comes from a height through what is gone. */
    private static double fallenTo(double height, List<Heights> gone) {
        double top = height;
        for (int i = 0; i < gone.size(); i++) {
            Heights one = gone.get(i);
            if (one.high() >= top - Heights.SAME && one.low() < top - Heights.SAME) {
                top = one.low();
                i = -1;
            }
        }
        return top;
    }

    /** The material in layers between all heights at which a cut starts or ends, from the bottom up. */
    public List<Prism> layers() {
        return known().stream().map(Layer::prism).toList();
    }

    /** The height of the highest material; the foot of the blank where nothing is left. */
    public double top() {
        return known().stream()
                .mapToDouble(layer -> layer.prism().zHigh())
                .max()
                .orElse(blank.zLow());
    }

    /**
     * The stock as a solid to be met. A layer reaches down through the layers below that hold it, so that what goes
     * into the stock from above meets it in one piece.
     */
    public Union solid() {
        List<Solid> solids = new ArrayList<>();
        List<Layer> all = known();
        for (int i = 0; i < all.size(); i++) {
            int foot = i;
            while (foot > 0 && all.get(i).standsOn(all.get(foot - 1), all.get(foot))) {
                foot--;
            }
            Prism top = all.get(i).prism();
            solids.add(new Prism(top.region(), all.get(foot).prism().zLow(), top.zHigh()));
        }
        return new Union(solids);
    }

    /** Volume and centroid, in closed form where cuts do not meet. */
    public Bulk bulk() {
        Bulk.Integral integral =
                new Bulk.Integral(z -> left(new Heights(z, z), Region.FOR_AREAS).moments());
        for (Heights band : bands(blank.heights())) {
            boolean straight = gone(band).stream().allMatch(Single::isStraight);
            integral.add(band.low(), band.high(), straight);
        }
        return integral.bulk();
    }

    /**
     * The stock as it lies after a motion of the part. While a cut cannot be shown exactly it counts as not made, and a
     * blank as the box that holds it; both come back when a later motion sets them upright again.
     */
    public Stock placed(Placement placement) {
        return new Stock(
                madeBlank.moved(placement),
                madeCuts.stream().map(cut -> cut.moved(placement)).toList());
    }

    private List<Layer> known() {
        List<Layer> layers = known;
        if (layers == null) {
            layers = layers(blank.heights());
            known = layers;
        }
        return layers;
    }

    private List<Layer> layers(Heights heights) {
        List<Layer> layers = new ArrayList<>();
        for (Heights band : bands(heights)) {
            Region region = left(band, Region.FLATNESS);
            if (!region.isEmpty()) {
                layers.add(new Layer(new Prism(region, band.low(), band.high()), takenFrom(band)));
            }
        }
        return layers;
    }

    /** The heights of the blank among these, parted wherever a cut starts or ends. */
    private List<Heights> bands(Heights heights) {
        if (!blank.heights().share(heights)) {
            return List.of();
        }
        double low = Math.max(heights.low(), blank.zLow());
        double high = Math.min(heights.high(), blank.zHigh());
        double[] levels = cuts.stream()
                .flatMapToDouble(cut -> DoubleStream.of(cut.zLow(), cut.zHigh()))
                .filter(z -> z > low + Heights.SAME && z < high - Heights.SAME)
                .sorted()
                .toArray();
        List<Heights> bands = new ArrayList<>();
        double foot = low;
        for (double level : levels) {
            if (level > foot + Heights.SAME) {
                bands.add(new Heights(foot, level));
                foot = level;
            }
        }
        bands.add(new Heights(foot, Math.max(foot, high)));
        return bands;
    }

    /** The cuts that are at work over the whole of a band. */
    private List<Single> gone(Heights band) {
        return cuts.stream().filter(cut -> cut.heights().hold(band)).toList();
    }

    private List<Single> takenFrom(Heights band) {
        return gone(band).stream()
                .filter(cut -> !cut.core(band.low(), band.high()).isEmpty())
                .toList();
    }

    private Region left(Heights band, double flatness) {
        Region region = blank.region();
        for (Single cut : gone(band)) {
            region = region.minus(cut.core(band.low(), band.high()), flatness);
        }
        return region;
    }

    /** Where blank and cuts are the same, in their order; the same stock cut in another order counts as another. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Stock stock && madeCuts.equals(stock.madeCuts) && madeBlank.equals(stock.madeBlank);
    }

    @Override
    public int hashCode() {
        return 31 * madeBlank.hashCode() + madeCuts.size();
    }
}
