package setwright.plan.choose;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.ShankForm;

/** Every holder that the shop owns for a cutter: those that may take it first, in the order the trade prefers. */
public final class HolderRank {
    private HolderRank() {}

    /** A holder with what speaks against it; kept where nothing does. */
    public record Candidate(Holder holder, List<String> against) {
        public boolean kept() {
            return against.isEmpty();
        }
    }

    /** Kept ones first, then by preference for the cutter's form, least projection, row id. */
    public static List<Candidate> of(Cutter cutter, Machine machine, List<Holder> holders) {
        return holders.stream()
                .filter(holder -> holder.kept().owned() != 0)
                .map(holder -> new Candidate(holder, HolderFit.against(cutter, holder, machine)))
                .sorted(Comparator.comparing((Candidate candidate) -> !candidate.kept())
                        .thenComparing(candidate ->
                                order(cutter).indexOf(candidate.holder().style()))
                        .thenComparing(
                                candidate -> candidate.holder().projection().inside())
                        .thenComparing(candidate -> candidate.holder().id()))
                .toList();
    }

    /** A screwed shank belongs in its own chuck: a plain collet grips what is left of it behind the thread (common practice). */
    private static List<Holder.Style> order(Cutter cutter) {
        List<Holder.Style> usual = order(cutter.form());
        return cutter.shankForm() == ShankForm.SCREWED ? before(usual, Holder.Style.SCREWED_SHANK_CHUCK) : usual;
    }

    /** Common practice: short and true before quick for what cuts on its side, quick before true for what only drills. */
    private static List<Holder.Style> order(Cutter.Form form) {
        return switch (form) {
            case END_MILL,
                    FACE_MILL,
                    FLY_CUTTER,
                    SHELL_MILL,
                    BORING_BAR,
                    SLITTING_SAW,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    FORM_CUTTER,
                    SPOT_DRILL,
                    CENTRE_DRILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    SCRIBER,
                    REAMER -> TRUE_FIRST;
            case DRILL -> QUICK_FIRST;
            case TAP -> FOR_TAPS;
        };
    }

    private static final List<Holder.Style> TRUE_FIRST = List.of(
            Holder.Style.SPINDLE_COLLET,
            Holder.Style.COLLET_CHUCK,
            Holder.Style.SCREWED_SHANK_CHUCK,
            Holder.Style.SHRINK,
            Holder.Style.SET_SCREW,
            Holder.Style.FACE_MILL_ARBOR,
            Holder.Style.SHELL_MILL_ARBOR,
            Holder.Style.STUB_ARBOR,
            Holder.Style.FLY_CUTTER_BODY,
            Holder.Style.BORING_HEAD,
            Holder.Style.TAPER_SOCKET,
            Holder.Style.DRILL_CHUCK_KEYED,
            Holder.Style.DRILL_CHUCK_KEYLESS,
            Holder.Style.FLOATING_REAMER_HOLDER,
            Holder.Style.TAPPING_HEAD);

    private static final List<Holder.Style> QUICK_FIRST = before(
            TRUE_FIRST,
            Holder.Style.DRILL_CHUCK_KEYLESS,
            Holder.Style.DRILL_CHUCK_KEYED,
            Holder.Style.COLLET_CHUCK,
            Holder.Style.SPINDLE_COLLET);

    private static final List<Holder.Style> FOR_TAPS = before(
            TRUE_FIRST,
            Holder.Style.DRILL_CHUCK_KEYED,
            Holder.Style.COLLET_CHUCK,
            Holder.Style.SPINDLE_COLLET,
            Holder.Style.DRILL_CHUCK_KEYLESS);

    private static List<Holder.Style> before(List<Holder.Style> rest, Holder.Style... first) {
        return Stream.concat(Stream.of(first), rest.stream()).distinct().toList();
    }
}
