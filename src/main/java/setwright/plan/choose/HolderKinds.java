package setwright.plan.choose;

import java.util.List;
import java.util.Optional;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.ShankForm;

/** Which kinds of cutter go into which kinds of holder, sizes apart (common practice). */
final class HolderKinds {
    private HolderKinds() {}

    /** What a cutter without an ordinary shank sits on, and how the trade says so, both ways round. */
    private record Seat(Holder.Style style, String cutterSays, String holderSays) {}

    private static final Seat FACE =
            new Seat(Holder.Style.FACE_MILL_ARBOR, "a face mill sits on an arbor", "an arbor takes face mills only");
    private static final Seat SHELL = new Seat(
            Holder.Style.SHELL_MILL_ARBOR, "a shell mill sits on a shell-mill arbor", "it takes shell mills only");
    private static final Seat STUB = new Seat(
            Holder.Style.STUB_ARBOR,
            "a cutter with a bore sits on a stub arbor",
            "a stub arbor takes saws and cutters with a bore only");
    private static final Seat FLY =
            new Seat(Holder.Style.FLY_CUTTER_BODY, "a fly cutter's bit sits in its body", "it takes a fly cutter only");
    private static final Seat BORING =
            new Seat(Holder.Style.BORING_HEAD, "a boring bar sits in a boring head", "it takes boring bars only");
    private static final List<Seat> SEATS = List.of(FACE, SHELL, STUB, FLY, BORING);

    /** What is wrong with the pair of kinds; empty where nothing is. */
    static Optional<String> against(Cutter cutter, Holder holder) {
        Optional<Seat> needed = seat(cutter.form());
        if (needed.isPresent()) {
            return needed.filter(seat -> seat.style() != holder.style()).map(Seat::cutterSays);
        }
        return SEATS.stream()
                .filter(seat -> seat.style() == holder.style())
                .map(Seat::holderSays)
                .findFirst()
                .or(() -> shanked(cutter, holder.style()));
    }

    private static Optional<Seat> seat(Cutter.Form form) {
        return switch (form) {
            case FACE_MILL -> Optional.of(FACE);
            case SHELL_MILL -> Optional.of(SHELL);
            case SLITTING_SAW, FORM_CUTTER -> Optional.of(STUB);
            case FLY_CUTTER -> Optional.of(FLY);
            case BORING_BAR -> Optional.of(BORING);
            case END_MILL,
                    SPOT_DRILL,
                    DRILL,
                    REAMER,
                    TAP,
                    CENTRE_DRILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    SCRIBER -> Optional.empty();
        };
    }

    private static Optional<String> shanked(Cutter cutter, Holder.Style style) {
        boolean morse = cutter.shankForm() == ShankForm.MORSE;
        if (morse != (style == Holder.Style.TAPER_SOCKET)) {
            return Optional.of(morse ? "a taper shank goes into a taper socket" : "it takes taper shanks only");
        }
        return switch (style) {
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> inChuck(cutter.form());
            case TAPER_SOCKET -> only(!mills(cutter.form()), "a socket drives by its tang, and a mill walks out of it");
            case SCREWED_SHANK_CHUCK -> only(cutter.shankForm() == ShankForm.SCREWED, "it takes screwed shanks only");
            case TAPPING_HEAD -> only(cutter.form() == Cutter.Form.TAP, "a tapping head takes taps only");
            case FLOATING_REAMER_HOLDER -> only(cutter.form() == Cutter.Form.REAMER, "it takes reamers only");
            case SPINDLE_COLLET,
                    COLLET_CHUCK,
                    SET_SCREW,
                    SHRINK,
                    FACE_MILL_ARBOR,
                    SHELL_MILL_ARBOR,
                    STUB_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD -> Optional.empty();
        };
    }

    private static Optional<String> only(boolean fits, String words) {
        return fits ? Optional.empty() : Optional.of(words);
    }

    private static Optional<String> inChuck(Cutter.Form form) {
        return mills(form)
                ? Optional.of("a drill chuck has no hold on "
                        + (form == Cutter.Form.END_MILL ? "an end mill" : "a milling cutter")
                        + ": side load and pull open it")
                : Optional.empty();
    }

    /** Whether it cuts on its side, and is pulled by its helix, on a shank. */
    private static boolean mills(Cutter.Form form) {
        return switch (form) {
            case END_MILL, KEYSEAT_CUTTER, T_SLOT_CUTTER, DOVETAIL_CUTTER, CHAMFER_MILL, CORNER_ROUNDER -> true;
            case SPOT_DRILL,
                    DRILL,
                    REAMER,
                    TAP,
                    CENTRE_DRILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    SCRIBER,
                    FACE_MILL,
                    FLY_CUTTER,
                    SHELL_MILL,
                    BORING_BAR,
                    SLITTING_SAW,
                    FORM_CUTTER -> false;
        };
    }
}
