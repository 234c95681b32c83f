package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.cutting.LimitName;
import setwright.plan.cut.MilledExtremes;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SecondOpinion;

/** What the open slot in the aluminium block comes to where it goes worse than nominal, on paper. */
class MilledExtremesTest {
    private final MilledBlock block = new MilledBlock();

    private OperationCut slot() {
        block.stage("slot1-slot", AluminiumBlock.openSlot());
        return block.cut("slot1-slot");
    }

    /** Two teeth, fz 0.06: one takes 0.06 and the whole run-out, total indicated, more, at most 0.12. */
    @Test
    void one_of_two_teeth_takes_its_feed_and_the_run_out_of_the_holder() {
        MilledExtremes beyond = requireNonNull(slot().extremes());

        assertThat(beyond.chip().inside()).isCloseTo(0.06, within(0.0005));
        assertThat(beyond.runOut().inside()).isPositive();
        assertThat(beyond.chipRunningOut().inside())
                .isCloseTo(
                        Math.min(0.12, beyond.chip().inside() + beyond.runOut().inside()), within(1e-6));
        assertThat(beyond.forceRunningOut().inside())
                .isGreaterThan(requireNonNull(slot().peakForce()).inside());
    }

    /** 304 W by kc, a worn edge 1.3 times that. */
    @Test
    void the_band_of_power_reaches_to_a_worn_edge_and_holds_every_published_way_that_lies_apart() {
        OperationCut cut = slot();
        MilledExtremes beyond = requireNonNull(cut.extremes());

        assertThat(beyond.power().expected()).isCloseTo(304, within(12.0));
        assertThat(beyond.power().high()).isGreaterThanOrEqualTo(1.3 * 292);
        assertThat(cut.opinions()).allSatisfy(opinion -> {
            if (opinion.ours().equals(cut.power()) && opinion.apart()) {
                assertThat(opinion.other().inside())
                        .isBetween(beyond.power().low(), beyond.power().high());
            }
        });
        assertThat(cut.powerBand().isPresent())
                .isEqualTo(cut.opinions().stream()
                        .filter(opinion -> opinion.ours().equals(cut.power()))
                        .anyMatch(SecondOpinion::apart));
    }

    /**
     * A roughing mill of 4 teeth, its waves 0.5 mm deep and set off by a quarter from tooth to tooth: what stands out most
     * at a height cuts 4 feeds there, for the others lie more than 3 feeds of it back.
     *
     * <pre>
     * largest chip of a slot  h = 4 fz
     * thin chip               0.005 / (4 fz)
     * chip load               fz / (1.5 · feed of the table), as of any other end mill
     * </pre>
     */
    @Test
    void a_roughing_mill_cuts_the_feed_of_all_its_teeth_at_the_crest_of_a_wave() {
        OperationCut cut = RoughedSlot.planned().cut().operation("slot1-slot").orElseThrow();
        MilledExtremes beyond = requireNonNull(cut.extremes());
        double feed = cut.feedPerEdge().inside();

        assertThat(beyond.chip().inside()).isCloseTo(4 * feed, within(1e-6));
        assertThat(RoughedSlot.used(cut, LimitName.THIN_CHIP)).isCloseTo(0.005 / (4 * feed), within(1e-6));
        assertThat(RoughedSlot.used(cut, LimitName.CHIP_LOAD)).isLessThan(1);
    }
}
