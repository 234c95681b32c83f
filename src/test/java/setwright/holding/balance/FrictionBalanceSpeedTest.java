package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

/** Guards at ten times the target; the targets themselves are benchmarks. */
class FrictionBalanceSpeedTest {
    @Test
    void one_load_on_sixteen_contacts_takes_no_longer_than_ten_milliseconds() {
        assertThat(millisecondsEach(1, 400)).isLessThan(10);
    }

    @Test
    void five_operations_of_twelve_loads_take_no_longer_than_a_quarter_of_a_second() {
        assertThat(5 * millisecondsEach(12, 400)).isLessThan(250);
    }

    /** The target is 50 ms. */
    @Test
    void a_whole_operation_of_720_loads_takes_no_longer_than_half_a_second() {
        List<Grip> grips = new ArrayList<>();
        List<List<Load>> operations = new ArrayList<>();
        Rounds.each(31, 12, (random, round) -> {
            grips.add(RandomGrips.vise(random));
            operations.add(RandomGrips.operation(random));
        });
        long before = System.nanoTime();
        for (int i = 0; i < grips.size(); i++) {
            new FrictionBalance(grips.get(i)).answer(operations.get(i));
        }
        assertThat((System.nanoTime() - before) / 1e6 / grips.size()).isLessThan(500);
    }

    private static double millisecondsEach(int loads, int answers) {
        List<Grip> grips = new ArrayList<>();
        List<List<Load>> cuts = new ArrayList<>();
        Rounds.each(30, answers, (random, round) -> {
            grips.add(RandomGrips.vise(random));
            cuts.add(RandomGrips.cuts(random, loads));
        });
        long before = System.nanoTime();
        for (int i = 0; i < answers; i++) {
            new FrictionBalance(grips.get(i)).answer(cuts.get(i));
        }
        return (System.nanoTime() - before) / 1e6 / answers;
    }
}
