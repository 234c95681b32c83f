package setwright.caution.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import setwright.caution.Judge;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.plan.Planner;

/** What the ranking says of parts that a toolroom sees every week. */
class HoldingRankingTest {
    private static final Job BLOCK = Toolroom.job("100x60x40", "mild steel", "face to 38\n4x M6 thru\n76x36");

    @Test
    void an_ordinary_block_goes_into_the_vise_that_stands_there_gripped_firm() {
        Ranked first = Toolroom.holdings(BLOCK).get(0);

        assertThat(first.text()).isEqualTo("6 in vise, jaws inboard, firm");
        assertThat(first.kept()).isTrue();
        assertThat(first.now()).isTrue();
        assertThat(first.reasons()).contains("It stands on the table already");
        assertThat(first.reasons()).anySatisfy(reason -> assertThat(reason).startsWith("The grip bears"));
    }

    @Test
    void every_arrangement_is_kept_or_dropped_with_reasons_and_kept_ones_stand_first() {
        List<Ranked> all = Toolroom.holdings(BLOCK);

        assertThat(all).allSatisfy(one -> assertThat(one.reasons()).isNotEmpty());
        assertThat(all).extracting(Ranked::rank).doesNotHaveDuplicates();
        int kept = (int) all.stream().filter(Ranked::kept).count();
        assertThat(all.subList(0, kept))
                .allSatisfy(one -> assertThat(one.kept()).isTrue());
        assertThat(all.subList(kept, all.size()))
                .allSatisfy(one -> assertThat(one.kept()).isFalse());
    }

    @Test
    void straps_over_a_face_that_is_cut_are_dropped_for_it() {
        Ranked straps = Toolroom.named(Toolroom.holdings(BLOCK), "Straps, straight on the table")
                .orElseThrow();

        assertThat(straps.kept()).isFalse();
        assertThat(straps.reasons()).first().asString().contains("lie on the face that is cut");
    }

    @Test
    void a_part_wider_than_the_inner_seats_goes_in_with_the_jaws_outboard_or_on_the_table() {
        List<Ranked> all = Toolroom.holdings(Toolroom.job("300x240x40", "mild steel", "4x M8 x 16 deep\n200x160"));
        Ranked inboard = Toolroom.named(all, "6 in vise, jaws inboard").orElseThrow();

        assertThat(inboard.kept()).isFalse();
        assertThat(inboard.reasons())
                .first()
                .asString()
                .contains("240 mm across")
                .contains("open 200 mm inboard");
        assertThat(all.get(0).text()).matches("6 in vise, jaws outboard.*|Straps, straight on the table");
        assertThat(all.get(0).kept()).isTrue();
    }

    @Test
    void a_thin_part_is_not_gripped_hard() {
        List<Ranked> all =
                Toolroom.holdings(Toolroom.job("150x80x6", "6061", "face to 5.5 +/-0.02\n4x M4 thru\n120x50"));
        Ranked hard = Toolroom.named(all, "6 in vise, jaws inboard, hard").orElseThrow();
        Ranked snug = Toolroom.named(all, "6 in vise, jaws inboard, snug").orElseThrow();

        assertThat(hard.reasons())
                .anySatisfy(reason -> assertThat(reason).contains("bows").containsIgnoringCase("springs back"));
        assertThat(snug.rank()).isLessThan(hard.rank());
    }

    @Test
    void a_long_round_bar_is_laid_on_the_table_or_in_vees_before_it_hangs_out_of_a_vise() {
        List<Ranked> all = Toolroom.holdings(Toolroom.job("round 40 x 400", "mild steel", "keyseat 12 x 5 x 60 long"));
        Ranked vise = Toolroom.named(all, "6 in vise, jaws inboard, firm").orElseThrow();

        assertThat(vise.reasons()).anySatisfy(reason -> assertThat(reason).contains("out of the jaws at each end"));
        assertThat(all.get(0).text()).matches("Straps, lying in a T-slot|V-blocks.*");
        assertThat(Toolroom.named(all, "Straps, straight on the table")
                        .orElseThrow()
                        .reasons())
                .containsExactly("A round bar rolls on a flat: lay it in a slot or in V-blocks");
    }

    @Test
    void a_plate_with_its_whole_top_faced_is_not_strapped_on_top() {
        List<Ranked> all = Toolroom.holdings(Toolroom.job("400x250x30", "mild steel", "face to 28"));

        assertThat(all)
                .filteredOn(one -> one.text().startsWith("Straps"))
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.kept()).isFalse());
        assertThat(all.get(0).text()).startsWith("6 in vise, jaws outboard");
    }

    @Test
    void a_part_too_heavy_to_lift_says_so_however_it_is_held() {
        List<Ranked> all = Toolroom.holdings(Toolroom.job("300x190x80", "mild steel", "4x M10 x 20 deep\n200x120"));

        assertThat(all)
                .filteredOn(Ranked::kept)
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.reasons())
                        .anySatisfy(
                                reason -> assertThat(reason).contains("weighs").contains("hoist")));
    }

    @Test
    void a_magnet_does_not_pull_aluminium_and_a_rotary_table_turns_nothing_that_is_not_divided() {
        List<Ranked> all = Toolroom.holdings(Toolroom.job("150x80x6", "6061", "4x M4 thru\n120x50"));

        assertThat(Toolroom.named(all, "Magnetic chuck").orElseThrow().reasons())
                .containsExactly("A magnet does not pull Aluminium 6061-T6");
        assertThat(Toolroom.named(all, "Rotary table").orElseThrow().reasons())
                .containsExactly("Nothing is divided or cut round an axis here");
    }

    @Test
    void taking_one_holds_the_part_so_and_stands_first_of_what_stands_there() {
        Ranked hard = Toolroom.named(Toolroom.holdings(BLOCK), "6 in vise, jaws inboard, hard")
                .orElseThrow();

        Ranked again = Toolroom.named(Toolroom.holdings(hard.changed()), "6 in vise, jaws inboard, hard")
                .orElseThrow();

        assertThat(again.now()).isTrue();
        assertThat(again.holdFactor()).isEqualTo(hard.holdFactor());
    }

    @Test
    void nobody_is_told_anything_once_it_is_dropped() {
        AtomicInteger told = new AtomicInteger();
        Trying dropped = new Trying() {
            @Override
            public boolean dropped() {
                return told.get() == 2;
            }

            @Override
            public void at(int done, int of) {
                told.incrementAndGet();
            }
        };
        Plan plan = Planner.plan(BLOCK, Toolroom.SHOP);

        assertThat(HoldingRanking.of(plan, Judge.judge(plan), "s1", Toolroom.SHOP, dropped))
                .isEmpty();
        assertThat(told.get()).isEqualTo(2);
    }
}
