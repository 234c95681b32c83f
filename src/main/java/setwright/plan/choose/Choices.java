package setwright.plan.choose;

import java.util.List;
import setwright.job.DrawnUp;
import setwright.plan.Rows;
import setwright.shop.Holder;

/** Ranks the holders for each operation of the drawn-up job. */
public final class Choices {
    private Choices() {}

    public static ChoicePlan of(DrawnUp drawnUp, Rows rows) {
        List<Holder> holders = rows.all(Holder.class);
        return new ChoicePlan(drawnUp.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .flatMap(operation -> rows.cutter(operation.cutter().value()).stream()
                        .map(cutter -> new ChoicePlan.OperationChoice(
                                operation.id(), HolderRank.of(cutter, rows.machine(), holders))))
                .toList());
    }
}
