package setwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.plan.Plan;
import setwright.plan.part.HeldWith;
import setwright.plan.part.SetUpStage;
import setwright.shop.Cutter;
import setwright.shop.ShopRow;

/** The shop rows that a plan was worked out with, each once, in the order in which the job comes to them. */
public final class RowsInUse {
    private final Plan plan;
    private final List<ShopRow> found = new ArrayList<>();

    private RowsInUse(Plan plan) {
        this.plan = plan;
    }

    public static List<ShopRow> of(Plan plan) {
        RowsInUse rows = new RowsInUse(plan);
        rows.add(plan.job().plan().machine().machine());
        rows.add(plan.job().plan().material());
        plan.drawnUp().setUps().forEach(setUp -> {
            HeldWith.of(setUp, plan.part().setUp(setUp.id()).map(SetUpStage::heights), plan.rows())
                    .forEach(held -> rows.add(held.row()));
            setUp.operations().forEach(rows::add);
        });
        return List.copyOf(rows.found);
    }

    private void add(DrawnOperation operation) {
        add(operation.cutter().value());
        add(operation.holder().value());
        Optional<Cutter> cutter = plan.rows().cutter(operation.cutter().value());
        cutter.flatMap(tool -> plan.rows().cuttingSpeed(tool.form(), tool.material()))
                .ifPresent(this::add);
    }

    private void add(String id) {
        plan.rows().shop().row(id).ifPresent(this::add);
    }

    private void add(ShopRow row) {
        if (!found.contains(row)) {
            found.add(row);
        }
    }
}
