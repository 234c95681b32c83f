package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.plan.BearingBlock;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** The demonstration that is planned wrongly on purpose shows what was planted, and how each is mended. */
class WrongPlanTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final Plan PLAN =
            Planner.plan(BearingBlock.job(Path.of("demo-jobs/planned-wrongly.setwright.json"), SHOP), SHOP);
    private static final Findings FINDINGS = Judge.judge(PLAN);

    private static List<Caution> cautions() {
        return FINDINGS.cautions().stream()
                .filter(caution -> caution.severity() != Severity.NOTE)
                .toList();
    }

    @Test
    void it_shows_what_was_planted_and_nothing_else() {
        assertThat(cautions())
                .extracting(caution -> caution.operation() + " " + caution.slug())
                .containsExactlyInAnyOrder(
                        "o5 drill-meets-parallel",
                        "o5 quill-runs-out",
                        "o5 speed-out-of-range",
                        "o2 wrong-holder",
                        "o2 cannot-plunge",
                        "o2 chatter-likely",
                        "o3 tap-bottoms",
                        "o3 order-broken",
                        "o6 short-grip");
        assertThat(FINDINGS.notChecked()).isEmpty();
    }

    @Test
    void each_of_them_has_a_remedy_that_was_tried() {
        assertThat(cautions())
                .allSatisfy(caution -> assertThat(Remedies.tried(PLAN, FINDINGS, caution, SHOP, () -> false))
                        .as(caution.message())
                        .isNotEmpty());
    }
}
