package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.cutting.Limits.Largest;
import setwright.cutting.Limits.Range;

class LimitsTest {
    @Test
    void the_limit_that_is_used_up_most_governs() {
        var power = new Limit(LimitName.SPINDLE_POWER, 0.4);
        var spring = new Limit(LimitName.TOOL_SPRING, 0.9);

        assertThat(Limits.governing(List.of(power, spring))).isEqualTo(spring);
        assertThat(spring.broken()).isFalse();
    }

    @Test
    void of_limits_used_up_alike_the_first_by_name_governs_in_any_order() {
        var edge = new Limit(LimitName.CUTTING_EDGE, 0.9);
        var finish = new Limit(LimitName.FINISH, 0.9);

        assertThat(Limits.governing(List.of(edge, finish))).isEqualTo(edge);
        assertThat(Limits.governing(List.of(finish, edge))).isEqualTo(edge);
    }

    @Test
    void the_largest_depth_is_where_the_first_limit_binds() {
        Largest largest = Limits.largest(
                new Range(0, 20, 1e-6),
                depth -> List.of(
                        new Limit(LimitName.SPINDLE_POWER, depth / 8), new Limit(LimitName.CUTTING_EDGE, depth / 12)));

        assertThat(largest.choice()).isCloseTo(8, within(1e-5)).isLessThanOrEqualTo(8);
        assertThat(largest.governing().name()).isEqualTo(LimitName.SPINDLE_POWER);
    }

    @Test
    void where_nothing_binds_the_whole_range_may_be_used() {
        Largest largest =
                Limits.largest(new Range(0, 20, 1e-6), depth -> List.of(new Limit(LimitName.CUTTING_EDGE, depth / 22)));

        assertThat(largest.choice()).isEqualTo(20);
        assertThat(largest.governing().broken()).isFalse();
    }

    @Test
    void where_the_least_breaks_a_limit_it_is_named() {
        Largest largest =
                Limits.largest(new Range(1, 20, 1e-6), depth -> List.of(new Limit(LimitName.TOOL_BREAKAGE, 2 + depth)));

        assertThat(largest.choice()).isEqualTo(1);
        assertThat(largest.governing().name()).isEqualTo(LimitName.TOOL_BREAKAGE);
        assertThat(largest.governing().broken()).isTrue();
    }

    @Test
    void nothing_governs_where_there_are_no_limits() {
        assertThatThrownBy(() -> Limits.governing(List.of())).hasMessage("No limits: nothing can govern.");
    }

    @Test
    void the_names_are_printed_in_the_words_of_the_trade() {
        assertThat(LimitName.values())
                .extracting(LimitName::words)
                .containsExactly(
                        "cutting edge",
                        "chip load",
                        "thin chip",
                        "spindle power",
                        "spindle torque",
                        "belt",
                        "tool spring",
                        "tool breakage",
                        "shank grip",
                        "shank pull-out",
                        "work grip",
                        "work spring",
                        "chatter",
                        "finish",
                        "feed range",
                        "overspeed");
    }
}
