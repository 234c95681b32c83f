package setwright.window.view.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TypeToFindTest {
    private static final List<String> CUTTERS = List.of(
            "Carbide end mill 6 mm, 4 flutes", "Drill 1/4 in, jobber", "Drill 6 mm, jobber", "Drill 6.8 mm, jobber");

    private final TypeToFind find = new TypeToFind();

    @Test
    void a_word_anywhere_is_found_by_its_beginning_and_narrowed_letter_by_letter() {
        assertThat(type("d")).isEqualTo(1);
        assertThat(type("rill6")).isEqualTo(2);
        assertThat(type(".8")).isEqualTo(3);
    }

    @Test
    void what_fits_none_begins_anew() {
        assertThat(type("drill")).isEqualTo(1);
        assertThat(type("ca")).isZero();
    }

    @Test
    void what_is_nowhere_finds_nothing_and_leaving_the_field_forgets() {
        assertThat(type("q")).isNegative();
        type("drill6");
        find.begin();
        assertThat(type("6")).isZero();
    }

    private int type(String text) {
        int found = -1;
        for (char letter : text.toCharArray()) {
            found = find.index(letter, CUTTERS);
        }
        return found;
    }
}
