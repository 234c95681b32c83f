package setwright.plan.pencil;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import setwright.job.Divided;
import setwright.job.Feature;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Tooth;
import setwright.job.WoodruffSeat;
import setwright.plan.Rows;
import setwright.plan.part.Lying;
import setwright.shop.Cutter;
import setwright.shop.FormCutter;
import setwright.shop.Holder;
import setwright.shop.KeyseatCutter;
import setwright.shop.ShopRow;
import setwright.shop.SlittingSaw;

/** The disc that lies level under the spindle for a slit, a Woodruff seat or the teeth of a gear. */
final class DiscPencil {
    /** A seat is cut by a cutter of its own width, within so much, mm. */
    private static final double SAME_WIDTH = 0.05;

    /** And of its own diameter: cutters are ground smaller as they wear, mm. */
    private static final double SAME_DIAMETER = 0.6;

    private static final double SAME = 0.01;

    /** Between the work and the collar of the arbor, mm (common practice). */
    private static final double COLLAR_CLEAR = 1;

    private static final Pattern INVOLUTE =
            Pattern.compile("involute module (\\d+(?:\\.\\d+)?), (\\d+)(?: (?:to|and) (\\d+))? teeth.*");

    private final Drafting drafting;
    private final CutterPencil owned;

    DiscPencil(Drafting drafting) {
        this.drafting = drafting;
        owned = new CutterPencil(drafting);
    }

    String choose(Feature feature) {
        return switch (feature.kind()) {
            case SLIT -> first(saws((Slit) feature));
            case WOODRUFF_SEAT -> first(seat((WoodruffSeat) feature));
            case DIVIDED -> first(gear((Divided) feature));
            default -> Rows.NOTHING;
        };
    }

    private static String first(Stream<? extends Cutter> inOrder) {
        return inOrder.findFirst().map(Cutter::id).orElse(Rows.NOTHING);
    }

    /** The widest that goes in, and of those the smallest that reaches past the collar of its arbor. */
    private Stream<SlittingSaw> saws(Slit slit) {
        double deep = depth(slit);
        return owned.owned(SlittingSaw.class)
                .filter(saw -> saw.width().inside() <= mm(slit.width()) + SAME)
                .filter(owned::usable)
                .sorted(Comparator.comparing((SlittingSaw saw) -> reach(saw) < deep)
                        .thenComparingDouble(saw -> -saw.width().inside())
                        .thenComparingDouble(saw -> saw.diameter().inside())
                        .thenComparing(ShopRow::id));
    }

    private double reach(SlittingSaw saw) {
        double collar = drafting.rows()
                .holder(new HolderPencil(drafting).choose(saw))
                .map(Holder::noseDiameter)
                .map(nose -> nose.inside())
                .orElse(0.0);
        return (saw.diameter().inside() - collar) / 2 - COLLAR_CLEAR;
    }

    private double depth(Slit slit) {
        return Optional.ofNullable(slit.depth())
                .map(DiscPencil::mm)
                .orElseGet(() -> Lying.of(drafting.block(), slit.side(), 0)
                        .upright()
                        .nominal()
                        .inside());
    }

    private Stream<KeyseatCutter> seat(WoodruffSeat seat) {
        return owned.owned(KeyseatCutter.class)
                .filter(cutter -> Math.abs(cutter.width().inside() - mm(seat.width())) <= SAME_WIDTH)
                .filter(cutter -> off(cutter, seat) <= SAME_DIAMETER)
                .filter(owned::usable)
                .sorted(Comparator.comparingDouble((KeyseatCutter cutter) -> off(cutter, seat))
                        .thenComparing(ShopRow::id));
    }

    private static double off(Cutter cutter, WoodruffSeat seat) {
        return Math.abs(cutter.diameter().inside() - mm(seat.cutter()));
    }

    private Stream<FormCutter> gear(Divided divided) {
        Tooth tooth = divided.tooth();
        return owned.owned(FormCutter.class)
                .filter(cutter -> tooth != null && cuts(cutter, tooth.module().inside(), divided.count()))
                .filter(owned::usable)
                .sorted(Comparator.comparing(ShopRow::id));
    }

    private static boolean cuts(FormCutter cutter, double module, int teeth) {
        Matcher words = INVOLUTE.matcher(cutter.profile());
        if (!words.matches() || Math.abs(Double.parseDouble(words.group(1)) - module) > 1e-6) {
            return false;
        }
        int least = Integer.parseInt(words.group(2));
        int most = words.group(3) == null ? least : Integer.parseInt(words.group(3));
        return teeth >= least && (teeth <= most || cutter.profile().endsWith("rack"));
    }

    private static double mm(Size size) {
        return size.nominal().inside();
    }
}
