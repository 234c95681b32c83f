package setwright.file.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosestTest {
    private static final List<String> NAMES = List.of("stickOut", "depth", "width", "up", "kneeHeight", "end-mill-16");

    @ParameterizedTest
    @CsvSource({
        "stikOut, stickOut",
        "stickout, stickOut",
        "sitckOut, stickOut",
        "stickOuts, stickOut",
        "dept, depth",
        "widht, width",
        "pu, up",
        "kneeHight, kneeHeight",
        "end-mill-18, end-mill-16",
        "colour,",
        "x,",
        "withdraw,"
    })
    void a_name_is_close_where_a_third_of_its_letters_at_most_are_otherwise(String misspelt, String meant) {
        assertThat(Closest.to(misspelt, NAMES).orElse(null)).isEqualTo(meant);
    }
}
