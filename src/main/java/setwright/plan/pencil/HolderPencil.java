package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.plan.Rows;
import setwright.plan.choose.HolderRank;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Holder: the first of the ranking that may take the cutter. */
final class HolderPencil {
    private static final List<Holder.Style> CHUCKS =
            List.of(Holder.Style.DRILL_CHUCK_KEYLESS, Holder.Style.DRILL_CHUCK_KEYED);

    private final Drafting drafting;

    HolderPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    String choose(Cutter cutter) {
        List<Holder> kept = kept(cutter);
        return inTheDrillsChuck(cutter, kept)
                .or(() -> kept.stream().findFirst())
                .map(Holder::id)
                .orElse(Rows.NOTHING);
    }

    private List<Holder> kept(Cutter cutter) {
        Rows rows = drafting.rows();
        return HolderRank.of(cutter, rows.machine(), rows.all(Holder.class)).stream()
                .filter(HolderRank.Candidate::kept)
                .map(HolderRank.Candidate::holder)
                .toList();
    }

    /** What goes down the hole with the drill, in the drill's chuck: a head that turns as it is moved keeps its height. */
    private Optional<Holder> inTheDrillsChuck(Cutter cutter, List<Holder> kept) {
        boolean withTheDrill = switch (cutter.form()) {
            case SPOT_DRILL, CENTRE_DRILL, COUNTERSINK -> true;
            case END_MILL,
                    DRILL,
                    REAMER,
                    TAP,
                    COUNTERBORE,
                    FACE_MILL,
                    SHELL_MILL,
                    SLITTING_SAW,
                    FORM_CUTTER,
                    FLY_CUTTER,
                    BORING_BAR,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    SCRIBER -> false;
        };
        return withTheDrill && drafting.rows().machine().losesPlace()
                ? kept.stream()
                        .filter(holder -> CHUCKS.contains(holder.style()))
                        .findFirst()
                : Optional.empty();
    }
}
