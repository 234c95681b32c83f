package setwright.window.view.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MarkupTest {
    @Test
    void a_line_is_broken_between_words_and_goes_on_a_little_further_in() {
        assertThat(Markup.broken("  source: a handbook, page 1152", 20))
                .isEqualTo("  source: a\n      handbook, page\n      1152");
    }

    @Test
    void a_line_that_fits_and_a_word_that_never_does_stay_as_they_are() {
        assertThat(Markup.broken("  P = M n", 20)).isEqualTo("  P = M n");
        assertThat(Markup.broken("a-word-that-is-longer-than-that", 10)).isEqualTo("a-word-that-is-longer-than-that");
    }

    @Test
    void signs_of_markup_are_shown_as_they_are() {
        assertThat(Markup.escaped("a < b & c > d")).isEqualTo("a &lt; b &amp; c &gt; d");
    }
}
