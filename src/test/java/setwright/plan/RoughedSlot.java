package setwright.plan;

import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.geometry.Side;
import setwright.job.Edits;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.Slot;
import setwright.plan.cut.OperationCut;
import setwright.shop.Shop;

/** A slot 16 wide and 6 deep in the aluminium block, cut by the roughing mill of the shop. */
final class RoughedSlot {
    private RoughedSlot() {}

    static Plan planned() {
        Shop shop = BearingBlock.shop();
        Job job = AluminiumBlock.with(new Slot(
                "slot1",
                "",
                Side.TOP,
                AluminiumBlock.size("16 mm"),
                AluminiumBlock.size("6 mm"),
                null,
                AluminiumBlock.middle(),
                null,
                GotBy.TOOL));
        Plan plan = Planner.plan(job, shop);
        return Planner.plan(
                Edits.set(plan.drawnUp(), "slot1-slot", OperationField.CUTTER, Plannable.inked("roughing-mill-hss-16")),
                shop);
    }

    static double used(OperationCut cut, LimitName name) {
        return cut.limits().stream()
                .filter(limit -> limit.name() == name)
                .mapToDouble(Limit::used)
                .findFirst()
                .orElseThrow();
    }
}
