package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/**
 * The part as it stands: the blank, and what was cut from it so far. In a height band a cut counts as gone only where
 * it is gone over the whole band, so that the stock is never shown smaller than it is.
 *
 * <p>Exact, as a body to be met: a blank of any kind that is not cut yet, and upright prisms and cylinders cut from an
 * upright one. On the side of caution: of an upright cone a band shows the smallest radius; a lying bar that is cut, and
 * what was cut lying, in {@link Single#steps bands} over their height; a cut with arcs laid on its side within {@link
 * Region#FLATNESS}; a cut with inward corners laid on its side counts as not made, a blank with inward corners laid on
 * its side as filled. Volume: exact for all but the last three.
 */
public final class Stock {
    private final Made<Single> madeBlank;
    private final List<Made<Single>> madeCuts;
    private final Single blank;
    private final List<Single> cuts;
    // Worked out when first asked for; the same whoever asks.
    private volatile @Nullable List<Layer> known;
    private volatile @Nullable Bulk weighed;
    private final @Nullable Lay before;

    /** How it lay when it was last cut, and how it was moved since. */
    private record Lay(Stock stock, Motion since) {
        Bulk bulk() {
            Bulk there = stock.bulk();
            return new Bulk(there.volume(), since.of(there.centroid()));
        }
    }

    private Stock(Made<Single> madeBlank, List<Made<Single>> madeCuts) {
        this(madeBlank, madeCuts, null);
    }

    private Stock(Made<Single> madeBlank, List<Made<Single>> madeCuts, @Nullable Lay before) {
        this.before = before;
        this.madeBlank = madeBlank;
        this.madeCuts = List.copyOf(madeCuts);
        blank = madeBlank.now();
        cuts = madeCuts.stream().filter(Made::isExact).map(Made::within).toList();
    }

    public static Stock of(Single blank) {
        return new Stock(new Made<>(blank, Motion.NONE), List.of());
    }

    /** A block in the part frame: length along x, depth along y, height along z. */
    public static Stock block(Point3 size) {
        return of(Box.of(Point3.ORIGIN, size).solid());
    }

    /** The stock after something was cut from it, as it lies now. */
    public Stock less(Solid cut) {
        List<Made<Single>> all = new ArrayList<>(madeCuts);
        for (Single part : cut.parts()) {
            all.add(new Made<>(part, Motion.NONE));
        }
        return new Stock(madeBlank, all);
    }

    /** The blank as it lies now. */
    public Single blank() {
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
        Heights uncut = blank.column(place);
        if (uncut == null) {
            return OptionalDouble.empty();
        }
        List<Heights> gone = new ArrayList<>();
        for (Single cut : cuts) {
            Heights column = cut.column(place);
            if (column != null) {
                gone.add(column);
            }
        }
        double top = fallenTo(uncut.high(), gone);
        return top > uncut.low() + Heights.SAME ? OptionalDouble.of(top) : OptionalDouble.empty();
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
     * into the stock from above meets it in one piece. What is not cut yet is the blank itself.
     */
    public Union solid() {
        if (cuts.isEmpty()) {
            return Union.of(blank);
        }
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

    /** Volume and centroid, in closed form where cuts do not meet; worked out as it lay when it was last cut. */
    public Bulk bulk() {
        Bulk bulk = weighed;
        if (bulk == null) {
            bulk = before == null ? integrated() : before.bulk();
            weighed = bulk;
        }
        return bulk;
    }

    /** The volume of the layers, so never less than {@link #bulk} has; what is met needs them anyway. */
    public double bound() {
        return before == null
                ? known().stream()
                        .map(Layer::prism)
                        .mapToDouble(layer -> layer.region().area() * (layer.zHigh() - layer.zLow()))
                        .sum()
                : before.stock().bound();
    }

    private Bulk integrated() {
        Bulk.Integral integral =
                new Bulk.Integral(z -> left(new Heights(z, z), Region.FOR_AREAS).moments());
        for (Heights band : bands(blank.heights(), Single::kinks)) {
            List<Single> there = new ArrayList<>(gone(band));
            there.add(blank);
            integral.add(band.low(), band.high(), Bulk.How.of(there));
        }
        return integral.bulk();
    }

    /**
     * The stock as it lies after a motion of the part. What cannot be shown exactly while it lies so comes back when a
     * later motion sets it upright again.
     */
    public Stock placed(Placement placement) {
        return moved(Motion.of(placement));
    }

    /** The same to any attitude. */
    public Stock moved(Motion motion) {
        Lay lay = before == null
                ? new Lay(this, motion)
                : new Lay(before.stock(), before.since().then(motion));
        return new Stock(
                madeBlank.moved(motion),
                madeCuts.stream().map(cut -> cut.moved(motion)).toList(),
                lay);
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
        for (Heights band : bands(heights, Single::steps)) {
            Region region = left(band, Region.FLATNESS);
            if (!region.isEmpty()) {
                layers.add(new Layer(new Prism(region, band.low(), band.high()), uncut(band), takenFrom(band)));
            }
        }
        return layers;
    }

    /** The heights of the blank among these, parted wherever blank or cuts start, end, or change by another rule. */
    private List<Heights> bands(Heights heights, Function<Single, List<Double>> parting) {
        if (!blank.heights().share(heights)) {
            return List.of();
        }
        double low = Math.max(heights.low(), blank.zLow());
        double high = Math.min(heights.high(), blank.zHigh());
        double[] levels = Stream.concat(Stream.of(blank), cuts.stream())
                .flatMap(solid -> parting.apply(solid).stream())
                .mapToDouble(Double::doubleValue)
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

    /** The plan of the blank: at one height just that, over a band what holds it. */
    private Region uncut(Heights band) {
        return band.low() == band.high() ? blank.core(band.low(), band.high()) : blank.shadow(band.low(), band.high());
    }

    private Region left(Heights band, double flatness) {
        Region region = uncut(band);
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
