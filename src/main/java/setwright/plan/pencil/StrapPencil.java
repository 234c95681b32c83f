package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.geometry.plane.Point2;
import setwright.job.Drawn;
import setwright.job.DrawnStrap;
import setwright.job.Strapping;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.Lying;
import setwright.shop.EdgeClamp;
import setwright.shop.ShopRow;

/**
 * Lays straps: two, four on a large part; clear of what is cut, near the ends, over places where packing can stand, the
 * stud close to the work in a slot of the table, the heel level or a step higher (common practice).
 */
final class StrapPencil {
    /** From this length or this area on four straps are laid, mm and mm² (common practice). */
    private static final double LONG = 400;

    private static final double LARGE = 250 * 150;

    /** A strap keeps this far from what is cut, for cutter and run-off, mm (common practice). */
    private static final double CLEAR = 12;

    /** A clamp on the edge stays that far below what is finished, mm (common practice). */
    private static final double EDGE_BELOW = 1;

    private final Drafting drafting;
    private final StrapRows shop;

    StrapPencil(Drafting drafting) {
        this.drafting = drafting;
        shop = new StrapRows(drafting.rows());
    }

    /** Straps that a person wrote down with their open places filled, else those that are laid here. */
    List<DrawnStrap> straps(List<Strapping> ink, StrapGround ground, Heights heights) {
        Map<Strapping.By, List<StrapSpot>> laid = new EnumMap<>(Strapping.By.class);
        for (Strapping.By by : Strapping.By.values()) {
            laid.put(by, lay(by, ground));
        }
        Strapping.By usual = usual(ground, laid, heights);
        List<Strapping> all =
                ink.isEmpty() ? pencilled(laid.getOrDefault(usual, List.of()).size()) : ink;
        Map<Strapping.By, Integer> next = new EnumMap<>(Strapping.By.class);
        List<DrawnStrap> drawn = new ArrayList<>();
        for (Strapping one : all) {
            Drawn<Strapping.By> by = Drawn.of(one.by(), () -> usual);
            List<StrapSpot> spots = laid.getOrDefault(by.value(), List.of());
            int at = next.merge(by.value(), 1, Integer::sum) - 1;
            StrapSpot spot = spots.isEmpty() ? overLeftEnd(heights) : spots.get(at % spots.size());
            drawn.add(draw(one, by, spot, heights));
        }
        return drawn;
    }

    /**
     * Straps where two find a place clear of all that is cut; else clamps on the edges that stay below what is cut, else bolts through holes that are there already.
     */
    private Strapping.By usual(StrapGround ground, Map<Strapping.By, List<StrapSpot>> laid, Heights heights) {
        boolean clear = ground.spots().stream()
                        .filter(spot -> spot.clearOf(ground.cut(), CLEAR))
                        .count()
                >= 2;
        boolean edges = laid.getOrDefault(Strapping.By.EDGE_CLAMP, List.of()).size() >= 2
                && shop.edgeClamp().filter(row -> below(row, heights)).isPresent();
        if (clear || ground.round()) {
            return Strapping.By.STRAP;
        }
        boolean bolts = laid.getOrDefault(Strapping.By.BOLT, List.of()).stream()
                        .filter(spot -> spot.clearOf(ground.cut(), CLEAR))
                        .count()
                >= 2;
        return edges ? Strapping.By.EDGE_CLAMP : bolts ? Strapping.By.BOLT : Strapping.By.STRAP;
    }

    /** Whether a clamp on the edge bears on the part and stays clear below its finished top. */
    private static boolean below(EdgeClamp row, Heights heights) {
        double top = heights.bed() + row.height().inside();
        double press = heights.bed() + row.pressHeight().inside();
        return top <= heights.finishedTop() - EDGE_BELOW && press > heights.partBottom();
    }

    private List<StrapSpot> lay(Strapping.By by, StrapGround ground) {
        return switch (by) {
            case STRAP -> lay(ground);
            case EDGE_CLAMP ->
                shop.edgeClamp()
                        .map(row -> opposite(ground.edges(row.length().inside()).stream()
                                .filter(spot -> spot.clearOf(ground.deep(), CLEAR))
                                .toList()))
                        .orElse(List.of());
            case BOLT ->
                outermost(ground.bolts().stream()
                        .filter(spot -> spot.clearOf(ground.cut(), 0))
                        .toList());
        };
    }

    /** Pairs across the part that push against each other: over the outermost slots, or over the middle one alone. */
    private static List<StrapSpot> opposite(List<StrapSpot> edges) {
        List<StrapSpot> pairs = edges.stream()
                .filter(one -> edges.stream()
                        .anyMatch(other ->
                                other != one && other.pad().y() == one.pad().y()))
                .toList();
        double low = pairs.stream().mapToDouble(spot -> spot.pad().y()).min().orElse(0);
        double high = pairs.stream().mapToDouble(spot -> spot.pad().y()).max().orElse(0);
        return pairs.stream()
                .filter(spot -> spot.pad().y() == low || spot.pad().y() == high)
                .toList();
    }

    /** The four that stand furthest out. */
    private static List<StrapSpot> outermost(List<StrapSpot> bolts) {
        Point2 middle = bolts.stream()
                .map(StrapSpot::pad)
                .reduce(Point2::plus)
                .map(sum -> sum.times(1.0 / bolts.size()))
                .orElse(new Point2(0, 0));
        return bolts.stream()
                .sorted(Comparator.comparingDouble(
                        (StrapSpot spot) -> -spot.pad().distance(middle)))
                .limit(4)
                .sorted(Comparator.comparingDouble(
                                (StrapSpot spot) -> spot.pad().x())
                        .thenComparingDouble(spot -> spot.pad().y()))
                .toList();
    }

    /** Two clamps that press the part on an upright face, u along it and v up it, near its ends at half its height. */
    List<DrawnStrap> onFace(List<Strapping> ink, Heights heights) {
        double middle = (heights.startTop() - heights.partBottom()) / 2;
        List<Strapping> all = ink.isEmpty() ? pencilled(2) : ink;
        List<DrawnStrap> drawn = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            double along = heights.length() * (i + 0.5) / all.size();
            Point2 pad = new Point2(heights.left() + along, heights.front() + middle);
            drawn.add(draw(
                    all.get(i),
                    Drawn.of(all.get(i).by(), () -> Strapping.By.STRAP),
                    new StrapSpot(pad, new Point2(0, -1), 18, 32, 64),
                    heights));
        }
        return drawn;
    }

    /** Where nothing better is found: over the left end in the middle. */
    private static StrapSpot overLeftEnd(Heights heights) {
        Point2 pad = new Point2(heights.left() + 18, (heights.front() + heights.back()) / 2);
        return new StrapSpot(pad, new Point2(-1, 0), 18, 32, 64);
    }

    private static List<Strapping> pencilled(int count) {
        List<Strapping> found = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            found.add(Strapping.pencilled("strap" + i));
        }
        return found;
    }

    private DrawnStrap draw(Strapping ink, Drawn<Strapping.By> by, StrapSpot spot, Heights heights) {
        StrapReach reach = shop.reach(by.value(), spot);
        return new DrawnStrap(
                ink.id(),
                by,
                Drawn.of(ink.strap(), reach::row),
                Drawn.of(ink.stud(), () -> shop.stud().map(ShopRow::id).orElse(Rows.NOTHING)),
                Drawn.of(ink.washer(), () -> ViseHolding.NONE),
                Drawn.of(ink.pad(), () -> Strapping.Pad.BARE),
                Drawn.of(ink.u(), () -> drafting.length(spot.pad().x() - heights.left())),
                Drawn.of(ink.v(), () -> drafting.length(spot.pad().y() - heights.front())),
                Drawn.of(ink.toward(), () -> drafting.angle(spot.angle())),
                Drawn.of(ink.padToStud(), () -> drafting.length(reach.toStud())),
                Drawn.of(ink.studToHeel(), () -> drafting.length(reach.toHeel())),
                Drawn.of(ink.heelOver(), () -> drafting.length(heelOver(by.value(), heights))),
                Drawn.of(ink.torque(), () -> drafting.torque(shop.torque())));
    }

    private double heelOver(Strapping.By by, Heights heights) {
        return by == Strapping.By.STRAP ? shop.heelOver(heights.startTop() - heights.bed()) : 0;
    }

    /** How many straps a part wants. */
    static int count(Lying lying, boolean round) {
        return count(lying.along().nominal().inside(), lying.across().nominal().inside(), round);
    }

    private static int count(double length, double depth, boolean round) {
        return !round && (length >= LONG || length * depth >= LARGE) ? 4 : 2;
    }

    private static List<StrapSpot> lay(StrapGround ground) {
        List<StrapSpot> open = best(ground);
        boolean large = count(ground.part().length(), ground.part().depth(), ground.round()) > 2;
        List<StrapSpot> laid = new ArrayList<>(pair(open, ground, large ? 0 : 2));
        for (int third = 0; large && third < 2; third++) {
            open.stream()
                    .filter(spot -> !laid.contains(spot))
                    .max(Comparator.comparingDouble(spot -> nearest(spot, laid)))
                    .ifPresent(laid::add);
        }
        laid.sort(Comparator.comparingDouble((StrapSpot spot) -> spot.pad().x())
                .thenComparingDouble(spot -> spot.pad().y()));
        return laid;
    }

    /** Places clear of every cut with packing under them; where there are not two, those clear above; else all. */
    private static List<StrapSpot> best(StrapGround ground) {
        List<StrapSpot> all = ground.spots();
        List<StrapSpot> clear =
                all.stream().filter(spot -> spot.clearOf(ground.cut(), CLEAR)).toList();
        List<StrapSpot> packed =
                clear.stream().filter(spot -> spot.leavesOpen(ground.through())).toList();
        if (packed.size() >= 2) {
            return packed;
        }
        return clear.size() >= 2 ? clear : all;
    }

    /** The two that are furthest apart; with a weight on it, those near to the middle line. */
    private static List<StrapSpot> pair(List<StrapSpot> open, StrapGround ground, double middling) {
        List<StrapSpot> pair = List.of();
        double best = Double.NEGATIVE_INFINITY;
        for (StrapSpot one : open) {
            for (StrapSpot other : open) {
                double score = score(one, other, ground, middling);
                if (one != other && score > best) {
                    best = score;
                    pair = List.of(one, other);
                }
            }
        }
        return pair;
    }

    private static double score(StrapSpot one, StrapSpot other, StrapGround ground, double middling) {
        double middle = ground.part().middle().y();
        double apart = Math.abs(one.pad().x() - other.pad().x())
                + Math.abs(one.pad().y() - other.pad().y());
        return apart
                - middling
                        * (Math.abs(one.pad().y() - middle)
                                + Math.abs(other.pad().y() - middle));
    }

    private static double nearest(StrapSpot spot, List<StrapSpot> laid) {
        return laid.stream()
                .mapToDouble(one -> one.pad().distance(spot.pad()))
                .min()
                .orElse(0);
    }
}
