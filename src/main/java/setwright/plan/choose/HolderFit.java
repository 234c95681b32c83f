package setwright.plan.choose;

import java.util.ArrayList;
import java.util.List;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.ShankForm;

/**
 * Whether a holder may take a cutter on a machine, with every reason against it. Kinds and capacities after common
 * practice: an end mill never in a drill chuck; a set screw wants a flat; right in a drill chuck are drills, spot
 * drills, reamers and taps.
 */
public final class HolderFit {
    private static final double SAME_SIZE = 0.03;

    private static final String PLAIN_SHANK = "a set screw wants a flat on the shank";

    private HolderFit() {}

    /** What speaks against this pairing; empty where nothing does. */
    public static List<String> against(Cutter cutter, Holder holder, Machine machine) {
        List<String> reasons = new ArrayList<>();
        if (holder.taper() != machine.taper()) {
            reasons.add("its taper does not fit the spindle of " + machine.name());
        }
        double shank = cutter.shank().inside();
        if (shank < holder.shankLeast().inside() - SAME_SIZE
                || shank > holder.shankGreatest().inside() + SAME_SIZE) {
            reasons.add("it takes shanks of " + range(holder) + ", this one is "
                    + cutter.shank().text());
        }
        style(cutter, holder, reasons);
        return reasons;
    }

    private static void style(Cutter cutter, Holder holder, List<String> reasons) {
        HolderKinds.against(cutter, holder).ifPresent(reasons::add);
        if (overdrives(cutter, holder)) {
            reasons.add("a chuck drives drills to " + holder.shankGreatest().text() + ", this one is "
                    + cutter.diameter().text() + " on a reduced shank");
        }
        if (holder.style() == Holder.Style.SET_SCREW && cutter.shankForm() != ShankForm.FLATTED) {
            reasons.add(PLAIN_SHANK);
        }
    }

    /** A chuck is rated by the drill that it drives, not by the shank that it holds (common practice). */
    private static boolean overdrives(Cutter cutter, Holder holder) {
        boolean chuck = switch (holder.style()) {
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> true;
            case SPINDLE_COLLET,
                    COLLET_CHUCK,
                    SET_SCREW,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> false;
        };
        return chuck
                && cutter.form() == Cutter.Form.DRILL
                && cutter.shankForm() == ShankForm.REDUCED
                && cutter.diameter().inside() > holder.shankGreatest().inside() + SAME_SIZE;
    }

    /** Whether all that speaks against the pairing is a plain shank under a set screw: a caution, not a stop. */
    public static boolean onlyPlainShank(Cutter cutter, Holder holder, Machine machine) {
        return against(cutter, holder, machine).equals(List.of(PLAIN_SHANK));
    }

    private static String range(Holder holder) {
        return holder.shankLeast().text().equals(holder.shankGreatest().text())
                ? holder.shankLeast().text()
                : holder.shankLeast().text() + " to " + holder.shankGreatest().text();
    }
}
