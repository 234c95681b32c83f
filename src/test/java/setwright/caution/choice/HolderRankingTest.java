package setwright.caution.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.DrawnOperation;
import setwright.job.Job;
import setwright.job.Operation;

/** What the ranking says of holders for everyday cutters. */
class HolderRankingTest {
    private static final Job BLOCK =
            Toolroom.job("100x60x40", "mild steel", "slot 12x8 deep\n12 H7 thru\n4x M8 thru\n76x36");

    private static List<Ranked> holders(Operation.Kind kind) {
        DrawnOperation operation = Toolroom.plan(BLOCK).drawnUp().setUps().get(0).operations().stream()
                .filter(one -> one.kind() == kind)
                .findFirst()
                .orElseThrow();
        return Toolroom.holders(BLOCK, operation.id());
    }

    @Test
    void an_end_mill_goes_into_a_collet_and_never_into_a_drill_chuck() {
        List<Ranked> all = holders(Operation.Kind.SLOT);

        assertThat(all.get(0).text()).contains("ollet");
        assertThat(Toolroom.named(all, "Keyed drill chuck 13 mm on an R8")
                        .orElseThrow()
                        .reasons())
                .anySatisfy(reason -> assertThat(reason).contains("no hold on an end mill"));
    }

    @Test
    void holders_of_another_taper_and_of_another_shank_are_dropped_with_the_sizes() {
        List<Ranked> all = holders(Operation.Kind.SLOT);

        assertThat(all)
                .filteredOn(one -> one.id().startsWith("collet-mt3"))
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.reasons())
                        .anySatisfy(reason -> assertThat(reason).contains("taper does not fit")));
        assertThat(Toolroom.named(all, "R8 collet 1/8 in").orElseThrow().reasons())
                .anySatisfy(reason -> assertThat(reason).contains("It takes shanks of"));
    }

    @Test
    void kept_ones_say_how_true_how_long_and_whether_they_are_touched_off_anew() {
        assertThat(holders(Operation.Kind.SLOT))
                .filteredOn(Ranked::kept)
                .isNotEmpty()
                .allSatisfy(one -> {
                    assertThat(one.reasons())
                            .anySatisfy(reason -> assertThat(reason).startsWith("It runs out"));
                    assertThat(one.reasons())
                            .anySatisfy(reason -> assertThat(reason).startsWith("The tip gives"));
                    assertThat(one.reasons())
                            .anySatisfy(reason -> assertThat(reason).contains("below the spindle nose"));
                });
    }

    @Test
    void a_drill_goes_into_a_chuck_first_and_a_collet_chuck_is_truer_and_shorter() {
        List<Ranked> all = holders(Operation.Kind.DRILL);

        assertThat(all.get(0).text()).containsIgnoringCase("drill chuck");
        Ranked collet = Toolroom.named(all, "ER32 collet chuck, R8").orElseThrow();
        assertThat(collet.kept()).isTrue();
        assertThat(collet.reasons()).anySatisfy(reason -> assertThat(reason).contains("shorter than now"));
    }

    @Test
    void taking_one_puts_the_cutter_into_it_and_leaves_the_stick_out_to_the_pencil() {
        Ranked keyed = Toolroom.named(holders(Operation.Kind.DRILL), "Keyed drill chuck 13 mm on an R8")
                .orElseThrow();

        assertThat(Toolroom.plan(keyed.changed()).drawnUp().setUps().get(0).operations())
                .anySatisfy(operation -> {
                    assertThat(operation.holder().value()).isEqualTo(keyed.id());
                    assertThat(operation.stickOut().pencilled()).isTrue();
                });
    }
}
