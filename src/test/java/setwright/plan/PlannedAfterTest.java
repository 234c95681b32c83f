package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Shop;

/** A plan that keeps the answers of the one before is the plan that would be made from nothing. */
class PlannedAfterTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> demonstrations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-jobs"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demonstrations")
    void after_an_edit_of_any_operation_the_plan_is_the_one_made_from_nothing(Path file) {
        Plan before = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        for (Job edited : longerTools(before)) {
            same(Planner.after(before, edited, SHOP), Planner.plan(edited, SHOP));
        }
    }

    @ParameterizedTest
    @MethodSource("demonstrations")
    void another_material_keeps_nothing(Path file) {
        Plan before = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        Job tough = before.job().withPlan(before.job().plan().withMaterial("steel-4140-prehard"));
        same(Planner.after(before, tough, SHOP), Planner.plan(tough, SHOP));
    }

    private static void same(Plan kept, Plan fresh) {
        assertThat(kept.hold().operations()).isEqualTo(fresh.hold().operations());
        assertThat(kept.hold().devices()).isEqualTo(fresh.hold().devices());
        assertThat(kept.room().setUps()).isEqualTo(fresh.room().setUps());
    }

    private static List<Job> longerTools(Plan plan) {
        List<Job> all = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            for (DrawnOperation operation : setUp.operations()) {
                double longer = operation.stickOut().value().inside() + 2;
                all.add(Edits.set(
                        plan.drawnUp(),
                        operation.id(),
                        OperationField.STICK_OUT,
                        Plannable.inked(new Typed<>(longer + " mm", new Length(longer)))));
            }
        }
        return all;
    }
}
