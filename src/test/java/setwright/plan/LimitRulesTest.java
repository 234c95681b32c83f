package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.Rounds;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.cut.DepthAdvice;
import setwright.plan.cut.LimitRule;
import setwright.plan.cut.LimitRule.Binds;
import setwright.plan.cut.LimitRule.Choice;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.Shop;

/** The slot of the gib: 12 mm end mill with 4 flutes at size, 6 deep, 79 mm/min at 660 rev/min, 36 out. */
class LimitRulesTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final Job JOB = BearingBlock.job(Path.of("demo-jobs/everyday/gib-slot.setwright.json"), SHOP);
    private static final Plan PLAN = Planner.plan(JOB, SHOP);

    private static LimitRule rule(Choice choice) {
        return PLAN.limitRules("o1").stream()
                .filter(rule -> rule.choice() == choice)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Binds> binds(Choice choice, LimitName limit) {
        return rule(choice).binds().stream()
                .filter(binds -> binds.limit() == limit)
                .findFirst();
    }

    private static double used(OperationCut cut, LimitName limit) {
        return cut.limits().stream()
                .filter(one -> one.name() == limit)
                .mapToDouble(Limit::used)
                .findFirst()
                .orElseThrow();
    }

    /** A milled operation names what edge, chip, spindle, belt, tool and shank have left. */
    @Test
    void a_milled_operation_says_all_that_can_bind_it_and_what_governs() {
        OperationCut cut = PLAN.cut().operation("o1").orElseThrow();
        assertThat(cut.limits())
                .extracting(Limit::name)
                .contains(
                        LimitName.CUTTING_EDGE,
                        LimitName.CHIP_LOAD,
                        LimitName.THIN_CHIP,
                        LimitName.SPINDLE_POWER,
                        LimitName.BELT,
                        LimitName.FEED_RANGE,
                        LimitName.TOOL_BREAKAGE,
                        LimitName.SHANK_GRIP,
                        LimitName.SHANK_PULL_OUT);
        assertThat(cut.limits())
                .isSortedAccordingTo(Comparator.comparingDouble(Limit::used).reversed());
        assertThat(cut.governing()).isEqualTo(cut.limits().get(0));
    }

    /**
     * In a slot the largest chip is the feed per tooth: too thin below 0.005 mm.
     *
     * <pre>
     * vf = 660 · 4 · 0.005 = 13.2 mm/min
     * </pre>
     *
     * The feed of the axis starts at 0.5 in/min = 12.7 mm/min.
     */
    @Test
    void the_feed_at_which_the_chip_is_too_thin_is_that_worked_by_hand() {
        Binds thin = binds(Choice.FEED, LimitName.THIN_CHIP).orElseThrow();
        assertThat(Unit.MM_PER_MIN.fromInside(thin.at())).isCloseTo(13.2, within(0.1));
        assertThat(thin.from()).isFalse();
        assertThat(Unit.MM_PER_MIN.fromInside(
                        binds(Choice.FEED, LimitName.FEED_RANGE).orElseThrow().at()))
                .isCloseTo(12.7, within(0.1));
    }

    /** The mean power grows in ratio to the depth, so that all of it is used up at 6 mm over the share used at 6 mm. */
    @Test
    void the_depth_at_which_the_power_is_used_up_grows_out_of_the_share_used() {
        double used = used(PLAN.cut().operation("o1").orElseThrow(), LimitName.SPINDLE_POWER);
        Binds power = binds(Choice.DEPTH, LimitName.SPINDLE_POWER).orElseThrow();
        assertThat(power.at()).isCloseTo(6 / used, within(0.005 * 6 / used));
        assertThat(power.from()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(
            value = Choice.class,
            names = {"DEPTH", "STICK_OUT"})
    void a_plan_at_the_choice_where_a_limit_binds_has_used_it_up(Choice choice) {
        List<Binds> all = rule(choice).binds();
        assertThat(all).isNotEmpty();
        for (Binds binds : all) {
            OperationField<Typed<Length>> field =
                    choice == Choice.DEPTH ? OperationField.DEPTH : OperationField.STICK_OUT;
            Typed<Length> value = new Typed<>(binds.at() + " mm", new Length(binds.at()));
            Job tried = Edits.set(PLAN.drawnUp(), "o1", field, Plannable.inked(value));
            OperationCut cut = Planner.plan(tried, SHOP).cut().operation("o1").orElseThrow();
            if (choice == Choice.STICK_OUT || binds.at() <= 6) {
                assertThat(used(cut, binds.limit())).as(binds.toString()).isCloseTo(1, within(0.02));
            }
        }
    }

    @Test
    void where_limits_bind_is_told_from_the_smallest_choice_to_the_largest() {
        for (LimitRule rule : PLAN.limitRules("o1")) {
            assertThat(rule.binds()).isSortedAccordingTo(Comparator.comparingDouble(Binds::at));
        }
    }

    /** Against the largest torque on a bad day the collet holds up to 22.6 mm; one pass is enough for 6 mm. */
    @Test
    void the_depth_advice_ends_where_the_first_limit_binds() {
        DepthAdvice advice = PLAN.depthAdvice("o1").orElseThrow();
        Binds first = rule(Choice.DEPTH).first().orElseThrow();
        assertThat(advice.most().deepest()).isCloseTo(first.at(), within(0.005 * first.at()));
        assertThat(advice.most().stoppedBy()).isEqualTo(first.limit());
        assertThat(advice.most().passes()).isEqualTo(1);
    }

    private static double advised(OperationField<Typed<Length>> field, double mm) {
        Typed<Length> value = new Typed<>(mm + " mm", new Length(mm));
        Job tried = Edits.set(PLAN.drawnUp(), "o1", field, Plannable.inked(value));
        return Planner.plan(tried, SHOP).depthAdvice("o1").orElseThrow().most().deepest();
    }

    @Test
    void a_longer_stick_out_never_advises_more_depth() {
        Rounds.each(74, (random, round) -> {
            double out = 30 + 200 * random.nextDouble();
            double longer = out + 5 + 50 * random.nextDouble();
            assertThat(advised(OperationField.STICK_OUT, longer))
                    .as(out + " and " + longer)
                    .isLessThanOrEqualTo(1.005 * advised(OperationField.STICK_OUT, out));
        });
    }
}
