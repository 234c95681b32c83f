package setwright.location.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.Rounds;

class GaugeStackTest {
    /** Published stacks; a stack of ours may have fewer blocks, never more. */
    @ParameterizedTest
    @CsvSource({
        // maker's guide, 81-piece set
        "81-inch, 3.9762, 25.4, 0.1002 0.126 0.750 3.000",
        // National Physical Laboratory, M112; four blocks do it: 1.005 1.34 6 50
        "112-metric, 58.345, 1, 1.005 1.04 1.30 5 50",
        // maker's manual p.11
        "47-metric, 37.785, 1, 1.005 1.08 1.7 4 30",
        // computed: own derivation
        "81-inch, 2.2700, 25.4, 0.120 0.150 2.000",
        "88-metric, 38.268, 1, 1.008 1.26 6.0 30"
    })
    void published_stacks_are_built_with_no_more_blocks(String set, double height, double unit, String blocks) {
        GaugeSet owned = GaugeSet.named(set).orElseThrow();
        double[] published = Arrays.stream(blocks.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(Arrays.stream(published).sum()).isCloseTo(height, within(1e-9));
        for (double block : published) {
            assertThat(owned.blocks().stream().map(owned::mm))
                    .anySatisfy(mm -> assertThat(mm).isCloseTo(block * unit, within(1e-6)));
        }
        GaugeStack stack = GaugeStack.of(height * unit, owned);
        assertThat(stack.built()).isCloseTo(height * unit, within(1e-9));
        assertThat(stack.blocks()).hasSizeLessThanOrEqualTo(published.length);
    }

    @Test
    void every_set_has_as_many_blocks_as_its_name_says() {
        for (GaugeSet set : GaugeSet.known()) {
            int pieces = Integer.parseInt(set.name().split("-")[0]);
            assertThat(set.blocks()).as(set.name()).hasSize(pieces).doesNotHaveDuplicates();
        }
    }

    /** Any few blocks of a set are a height that is built exactly, with no more of them, each once. */
    @Test
    void what_was_stacked_at_random_is_built_with_no_more_blocks() {
        Rounds.each(71, (random, round) -> {
            GaugeSet set = GaugeSet.known().get(random.nextInt(GaugeSet.known().size()));
            TreeSet<Integer> chosen = new TreeSet<>();
            for (int i = random.nextInt(1, 6); i > 0; i--) {
                chosen.add(set.blocks().get(random.nextInt(set.blocks().size())));
            }
            double height = set.mm(chosen.stream().mapToInt(Integer::intValue).sum());
            GaugeStack stack = GaugeStack.of(height, set);
            assertThat(stack.built()).isCloseTo(height, within(1e-9));
            assertThat(stack.blocks()).hasSizeLessThanOrEqualTo(chosen.size()).doesNotHaveDuplicates();
            assertThat(set.blocks().stream().map(set::mm)).containsAll(List.copyOf(stack.blocks()));
        });
    }

    @Test
    void a_height_that_the_set_cannot_reach_is_refused_and_a_finer_one_comes_near() {
        GaugeSet set = GaugeSet.named("88-metric").orElseThrow();
        assertThatThrownBy(() -> GaugeStack.of(0.4, set)).hasMessageContaining("smallest block");
        assertThatThrownBy(() -> GaugeStack.of(5000, set)).hasMessageContaining("no more than");
        assertThat(GaugeStack.of(38.26812, set).built()).isCloseTo(38.268, within(1e-9));
    }
}
