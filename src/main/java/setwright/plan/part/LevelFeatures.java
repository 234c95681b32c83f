package setwright.plan.part;

import java.util.Optional;
import setwright.job.Divided;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.WoodruffSeat;
import setwright.shop.BoredCutter;
import setwright.shop.Cutter;

/**
 * What a disc that lies level under the spindle cuts into a side that stands upright: slits, seats for Woodruff keys, the
 * teeth of a gear that lies. Kerf and seat are upright prisms, so they are exact; of teeth nothing counts as gone.
 */
record LevelFeatures(Laid laid, Heights heights, DrawnOperation operation, Cutter tool) {
    /** Height of the underside of what is cut; empty where a disc does not come at it level. */
    Optional<Double> floor(Feature feature) {
        return way(feature).map(Cut::floor);
    }

    /** Empty where a disc does not come at it level. */
    Optional<Cut> way(Feature feature) {
        return SideBeside.of(laid, beside(feature), heights).flatMap(side -> switch (feature.kind()) {
            case SLIT -> slit((Slit) feature, side);
            case WOODRUFF_SEAT -> seat((WoodruffSeat) feature, side);
            case DIVIDED -> teeth((Divided) feature, side);
            default -> Optional.empty();
        });
    }

    /** Teeth are cut on the side of the lying gear that faces the machinist, or the left. */
    private setwright.geometry.Side beside(Feature feature) {
        return feature.kind() == Feature.Kind.DIVIDED ? RoundAxis.cutSide(laid, feature.side()) : feature.side();
    }

    private Optional<Cut> slit(Slit slit, SideBeside side) {
        double angle = slit.place().angle() == null ? 0 : slit.place().angle().inside();
        if (!side.level(angle)) {
            return Optional.empty();
        }
        Size depth = slit.depth();
        double sunk = depth == null ? side.deep() + MilledDepth.OVER_RUN : mm(depth);
        LevelDisc disc = disc(sunk);
        SideBeside.Along at = side.place(slit.place());
        Size length = slit.length();
        Milled cut =
                length == null ? disc.past(-side.length() / 2, side.length() / 2) : closed(disc, at.x(), mm(length));
        double wide = Math.max(mm(slit.width()), thick());
        return Optional.of(new Cut(cut.under(wide).mapped(side.onTable()), at.height() - wide / 2, thick()));
    }

    /** As long at the surface as asked, where the disc is not longer than that already. */
    private static Milled closed(LevelDisc disc, double middle, double length) {
        double half = Math.max(0, length / 2 - disc.arc());
        return disc.sunkIn(middle - half, middle + half);
    }

    /** The depth of a seat counts from its side, lower than the crown by the rise of the arc over its width. */
    private Optional<Cut> seat(WoodruffSeat seat, SideBeside side) {
        if (!side.level(MadeFrom.alongU(seat, heights, laid) ? 0 : Math.PI / 2)) {
            return Optional.empty();
        }
        LevelDisc disc = disc(fromCrown(seat));
        SideBeside.Along at = side.place(seat.place());
        Milled cut = disc.sunkIn(at.x(), at.x()).under(thick());
        return Optional.of(new Cut(cut.mapped(side.onTable()), at.height() - thick() / 2, thick()));
    }

    /** One gap along the axis; the gear is turned for the next. */
    private Optional<Cut> teeth(Divided divided, SideBeside side) {
        if (divided.what() != Divided.What.TEETH) {
            return Optional.empty();
        }
        Milled cut = disc(mm(divided.depth())).past(-side.length() / 2, side.length() / 2);
        double axis = (side.bottom() + side.top()) / 2;
        return Optional.of(new Cut(cut.notGone().under(thick()).mapped(side.onTable()), axis - thick() / 2, thick()));
    }

    private LevelDisc disc(double sunk) {
        double pass =
                operation.width().pencilled() ? sunk : operation.width().value().inside();
        return LevelDisc.of(tool.diameter().inside() / 2, sunk, pass);
    }

    private double thick() {
        return tool instanceof BoredCutter bored
                ? bored.width().inside()
                : tool.fluteLength().inside();
    }

    /** How far a seat goes in below the crown of its shaft, mm. */
    static double fromCrown(WoodruffSeat seat) {
        double radius = mm(seat.shaft()) / 2;
        double half = mm(seat.width()) / 2;
        return mm(seat.depth()) + radius - Math.sqrt(Math.max(0, radius * radius - half * half));
    }

    private static double mm(Size size) {
        return MilledFeatures.mm(size);
    }
}
