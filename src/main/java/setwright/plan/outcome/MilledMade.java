package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Feature;
import setwright.job.Keyseat;
import setwright.job.Operation;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.TSlot;
import setwright.job.WoodruffSeat;
import setwright.plan.part.MilledWidth;
import setwright.shop.BoredCutter;
import setwright.shop.CornerRounder;
import setwright.shop.DovetailCutter;

/** How wide, how sharp in its corners and how deep a milled feature comes, by the size of its cutter. */
record MilledMade(ComesOut.Seen seen) {
    /** A round corner leaves so much of its radius standing in a square one. */
    private static final double IN_CORNER = Math.sqrt(2) - 1;

    /** Woodruff cutters are ground smaller as they wear; a seat may be so much off in its diameter, mm (ASME B17.2). */
    private static final double SEAT = 0.6;

    /** A saw runs a little wider than it is; kerf and seat are not gauges, mm (common practice). */
    private static final double MORE = 0.04;

    List<Odd> odd() {
        return seen.stage().runs() == 0 && seen.feature().kind() != Feature.Kind.POCKET ? List.of() : made();
    }

    private List<Odd> made() {
        return switch (seen.feature().kind()) {
            case SLOT -> wide(((Slot) seen.feature()).width());
            case ARC_SLOT -> wide(((ArcSlot) seen.feature()).width());
            case KEYSEAT -> wide(((Keyseat) seen.feature()).width());
            case T_SLOT -> tSlot((TSlot) seen.feature());
            case DOVETAIL -> dovetail((Dovetail) seen.feature());
            case POCKET -> pocket((Pocket) seen.feature());
            case PROFILE -> profile((ProfileCut) seen.feature());
            case CHAMFER -> chamfer((Chamfer) seen.feature());
            case WOODRUFF_SEAT -> seat((WoodruffSeat) seen.feature());
            case SLIT -> slit((Slit) seen.feature());
            case DIVIDED -> spline((Divided) seen.feature());
            case FACE, STEP, RADIUS_END, HOLE, FLATS, INCLINED_FACE -> List.of();
        };
    }

    private double diameter() {
        return seen.cutter().diameter().inside();
    }

    private List<Odd> wide(@Nullable Size width) {
        return width == null ? List.of() : seen.tooMuch(diameter() - width.greatestMm(), "too wide");
    }

    private List<Odd> spline(Divided divided) {
        return divided.what() == Divided.What.SPLINES ? wide(divided.width()) : List.of();
    }

    private List<Odd> tSlot(TSlot slot) {
        if (seen.operation().kind() != Operation.Kind.T_SLOT) {
            return wide(slot.neck());
        }
        List<Odd> found = new ArrayList<>(wide(slot.headWidth()));
        double high = seen.cutter().fluteLength().inside() - slot.headHeight().greatestMm();
        found.addAll(seen.tooMuch(high, "too high under its neck"));
        return found;
    }

    private List<Odd> dovetail(Dovetail tail) {
        if (!(seen.cutter() instanceof DovetailCutter cutter)
                || seen.operation().kind() != Operation.Kind.DOVETAIL) {
            return List.of();
        }
        double depth = tail.depth().nominal().inside();
        double flank = depth / StrictMath.tan(tail.angle().inside());
        double made = depth / StrictMath.tan(cutter.angle().inside());
        List<Odd> found = new ArrayList<>(seen.tooMuch(flank - made, "at the top of its flanks"));
        found.addAll(seen.left(made - flank, "at the top of its flanks"));
        return found;
    }

    private List<Odd> pocket(Pocket pocket) {
        double narrow = Math.min(pocket.length().greatestMm(), pocket.width().greatestMm());
        if (diameter() > narrow + ComesOut.NOTHING) {
            return seen.left(diameter() - narrow, "short of getting in at all");
        }
        return seen.left(IN_CORNER * (diameter() / 2 - pocket.corner().inside()), "in its corners");
    }

    private List<Odd> profile(ProfileCut cut) {
        double corner = MilledWidth.leastInnerRadius(cut);
        return corner == 0 ? List.of() : seen.left(IN_CORNER * (diameter() / 2 - corner), "in its corners");
    }

    private List<Odd> chamfer(Chamfer chamfer) {
        if (seen.cutter() instanceof CornerRounder rounder) {
            return seen.left(chamfer.width().leastMm() - rounder.radius().inside(), "at the edge");
        }
        double reach = diameter() / 2 - MilledWidth.besideWall(seen.cutter());
        return seen.left(chamfer.width().leastMm() - reach, "at the edge");
    }

    private List<Odd> seat(WoodruffSeat seat) {
        List<Odd> found = new ArrayList<>(
                seen.tooMuch(seen.cutter().fluteLength().inside() - seat.width().greatestMm() - MORE, "too wide"));
        double off = diameter() - seat.cutter().nominal().inside();
        found.addAll(off > SEAT ? seen.tooMuch(off, "too long") : List.of());
        found.addAll(off < -SEAT ? seen.left(-off, "at its ends") : List.of());
        return found;
    }

    private List<Odd> slit(Slit slit) {
        if (!(seen.cutter() instanceof BoredCutter saw)) {
            return List.of();
        }
        List<Odd> found =
                new ArrayList<>(seen.tooMuch(saw.width().inside() - slit.width().greatestMm() - MORE, "too wide"));
        Size length = slit.length();
        Size depth = slit.depth();
        if (length != null && depth != null) {
            double in = depth.nominal().inside();
            double chord = 2 * Math.sqrt(Math.max(0, in * (diameter() - in)));
            found.addAll(seen.tooMuch(chord - length.greatestMm(), "too long at the surface"));
        }
        return found;
    }
}
