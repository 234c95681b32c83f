package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.job.SetUp;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Measure;
import setwright.quantity.UnitSystem;

/** How true a set-up comes out: second zeros, how a zero is won back, and what every tolerance has of its error budget. */
final class TruthBlocks {
    private final Shown shown;
    private final DrawnSetUp setUp;

    TruthBlocks(Shown shown, DrawnSetUp setUp) {
        this.shown = shown;
        this.setUp = setUp;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>(zeros());
        List<FeatureBudget> budgets = shown.plan().place().budgets().stream()
                .filter(budget -> budget.setUp().equals(setUp.id()))
                .toList();
        if (!budgets.isEmpty()) {
            blocks.add(new Block.Heading("How true it comes"));
            blocks.add(table(budgets));
        }
        return blocks;
    }

    private List<Block> zeros() {
        return shown.plan().job().plan().setUps().stream()
                .filter(one -> one.id().equals(setUp.id()))
                .flatMap(one -> one.zeros().stream())
                .map(zero -> (Block) Block.Words.of(second(zero)))
                .toList();
    }

    private static String second(SetUp.NamedZero zero) {
        return "Second zero, " + zero.name() + ": X " + zero.x().text() + ", Y "
                + zero.y().text() + " from the first. To win the first back go to it and wind back by the same.";
    }

    private Block table(List<FeatureBudget> budgets) {
        List<List<String>> rows = budgets.stream()
                .map(budget -> List.of(budget.what(), fine(budget.limit()), fine(budget.decisive()), budget.largest()))
                .toList();
        return new Block.Table(
                List.of(
                        Block.Column.words("tolerance"),
                        Block.Column.figures("may be out"),
                        Block.Column.figures("comes within"),
                        Block.Column.words("most by")),
                rows);
    }

    private String fine(double mm) {
        return shown.printing().of(Measure.LENGTH, mm, shown.printing().units() == UnitSystem.METRIC ? 3 : 4);
    }
}
