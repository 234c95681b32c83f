package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.Rounds;
import setwright.quantity.NamedSize.Series;

class DrillNamesTest {
    private final DrillNames names = DrillNames.published();

    /** Millimetres are published to four digits, inches of tap drills to three or four. */
    @ParameterizedTest
    @CsvFileSource(resources = "drill-sizes-published.csv", numLinesToSkip = 1)
    void a_drill_has_its_published_size(String name, @Nullable Double inch, @Nullable Double mm, String source) {
        double size = names.size(name).orElseThrow().mm();
        if (mm != null) {
            assertThat(size).as(source).isCloseTo(mm, within(0.5e-4 + 1e-12));
        }
        if (inch != null) {
            assertThat(size / 25.4).as(source).isCloseTo(inch, within(0.5e-4 + 1e-12));
        }
        assertThat(inch != null || mm != null).isTrue();
    }

    @Test
    void the_table_is_complete() {
        assertThat(of(Series.NUMBER)).extracting(NamedSize::name).hasSize(80).contains("#1", "#80");
        assertThat(of(Series.LETTER)).extracting(NamedSize::name).hasSize(26).contains("A", "Z");
        assertThat(of(Series.FRACTION)).extracting(NamedSize::name).hasSize(64).contains("1/64 in", "1/2 in", "1 in");
    }

    @Test
    void numbers_fall_as_they_count_up_and_letters_and_fractions_rise() {
        Comparator<NamedSize> bySize =
                Comparator.comparingDouble(named -> named.size().mm());
        assertThat(of(Series.NUMBER)).isSortedAccordingTo(bySize.reversed());
        assertThat(of(Series.LETTER)).isSortedAccordingTo(bySize);
        assertThat(of(Series.FRACTION)).isSortedAccordingTo(bySize);
        assertThat(of(Series.LETTER).get(0).size().mm())
                .isGreaterThan(of(Series.NUMBER).get(0).size().mm());
    }

    @Test
    void fractions_are_exact() {
        for (int i = 0; i < 64; i++) {
            assertThat(of(Series.FRACTION).get(i).size().mm())
                    .isEqualTo(Rational.of(i + 1, 64).times(Definitions.INCH).nearest());
        }
    }

    @Test
    void a_fraction_is_known_by_its_value_and_needs_no_unit() {
        assertThat(names.size("27/64")).contains(new Length(10.715625));
        assertThat(names.size("54/128 in")).contains(new Length(10.715625));
        assertThat(names.size("27/64\" drill")).contains(new Length(10.715625));
        assertThat(names.size("1 in")).contains(new Length(25.4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7", "#0", "#81", "#97", "AA", "1/7", "65/64", "1/0", "5 mm", "#", "drill", "7 drill"})
    void what_is_no_name_has_no_size(String name) {
        assertThat(names.size(name)).isEmpty();
    }

    /** Letter E and 1/4 in are one size; 6.4 mm lies between them and letter F. */
    @Test
    void the_neighbours_of_a_size_come_nearest_first() {
        List<NamedSize> near = names.near(new Length(6.4), 4);

        assertThat(near).extracting(NamedSize::name).containsExactly("E", "1/4 in", "F", "D");
        assertThat(near.get(0).over(new Length(6.4)).mm()).isCloseTo(-0.05, within(1e-12));
    }

    @Test
    void no_size_is_nearer_than_the_neighbours() {
        Rounds.each(47, (random, round) -> {
            Length size = new Length(random.nextDouble(0.2, 26));
            List<NamedSize> near = names.near(size, 3);
            double farthest = Math.abs(near.get(2).over(size).mm());
            assertThat(names.all().stream()
                            .filter(named -> !near.contains(named))
                            .mapToDouble(named -> Math.abs(named.over(size).mm())))
                    .allMatch(distance -> distance >= farthest);
        });
    }

    private List<NamedSize> of(Series series) {
        return names.all().stream().filter(named -> named.series() == series).toList();
    }
}
