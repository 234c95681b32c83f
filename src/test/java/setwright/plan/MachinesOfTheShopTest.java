package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.job.Job;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Shop;
import setwright.shop.Taper;

/** One job on each machine of the shop: the pencil keeps to the tooling that its taper takes. */
class MachinesOfTheShopTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final Path FILE = Path.of("demo-jobs/bearing-block.setwright.json");

    static Stream<Machine> machines() {
        return SHOP.all(Machine.class).stream();
    }

    private static Plan planned(Machine machine) throws IOException {
        String text = Files.readString(FILE).replace("\"knee-mill-r8-9x49\"", "\"" + machine.id() + "\"");
        Job job = ((JobRead.Opened) JobFile.read(text, SHOP)).job();
        return Planner.plan(job, SHOP);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void every_holder_that_is_pencilled_fits_the_spindle(Machine machine) throws IOException {
        Plan plan = planned(machine);
        assertThat(plan.rows().machine()).isEqualTo(machine);
        assertThat(plan.drawnUp().setUps())
                .flatExtracting(setUp -> setUp.operations())
                .isNotEmpty()
                .allSatisfy(operation -> plan.rows()
                        .holder(operation.holder().value())
                        .ifPresent(holder ->
                                assertThat(holder.taper()).as(holder.id()).isEqualTo(machine.taper())));
    }

    /** On a spindle with a taper of its own there is no arbor: the face is milled with what its collets take. */
    @Test
    void the_machine_with_an_odd_taper_works_with_straight_shanks_alone() throws IOException {
        Machine odd = machines()
                .filter(machine -> machine.taper() == Taper.ODD)
                .findFirst()
                .orElseThrow();
        Plan plan = planned(odd);
        assertThat(plan.drawnUp().setUps())
                .flatExtracting(setUp -> setUp.operations())
                .extracting(operation -> plan.rows()
                        .holder(operation.holder().value())
                        .map(Holder::style)
                        .orElse(Holder.Style.SPINDLE_COLLET))
                .isSubsetOf(Holder.Style.SPINDLE_COLLET, Holder.Style.COLLET_CHUCK, Holder.Style.DRILL_CHUCK_KEYLESS);
    }
}
