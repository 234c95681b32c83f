package setwright.plan.pencil;

import setwright.plan.Rows;
import setwright.plan.choose.HolderRank;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Holder: the first of the ranking that may take the cutter. */
final class HolderPencil {
    private final Drafting drafting;

    HolderPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    String choose(Cutter cutter) {
        Rows rows = drafting.rows();
        return HolderRank.of(cutter, rows.machine(), rows.all(Holder.class)).stream()
                .filter(HolderRank.Candidate::kept)
                .map(candidate -> candidate.holder().id())
                .findFirst()
                .orElse(Rows.NOTHING);
    }
}
