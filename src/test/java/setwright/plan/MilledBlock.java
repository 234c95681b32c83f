package setwright.plan;

import setwright.job.Feature;
import setwright.job.Job;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.shop.Shop;

/** The aluminium block with some features, planned with a drawer of cutters that stays as it is. */
final class MilledBlock {
    private Plan plan = AluminiumBlock.plan();

    Plan plan() {
        return plan;
    }

    void plan(Job job, Shop shop) {
        plan = Planner.plan(job, shop);
    }

    OperationStage stage(String operation, Feature... features) {
        plan(AluminiumBlock.with(features), AluminiumBlock.drawer());
        return plan.part().operation(operation).orElseThrow();
    }

    OperationCut cut(String operation) {
        return plan.cut().operation(operation).orElseThrow();
    }

    String cutter(String operation) {
        return plan.drawnUp().setUps().get(0).operations().stream()
                .filter(drawn -> drawn.id().equals(operation))
                .map(drawn -> drawn.cutter().value())
                .findFirst()
                .orElseThrow();
    }

    static double removed(OperationStage stage) {
        return stage.before().bulk().volume() - stage.after().bulk().volume();
    }
}
