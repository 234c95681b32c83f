package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.caution.Page.Heading;

class PageTest {
    static List<Page> pages() {
        return Page.all();
    }

    @Test
    void every_check_has_its_page_and_every_page_its_check() throws Exception {
        File folder = new File(Page.class.getResource("slides-in-grip.txt").toURI()).getParentFile();
        List<String> packed = Arrays.stream(folder.list((in, name) -> name.endsWith(".txt")))
                .map(name -> name.substring(0, name.length() - ".txt".length()))
                .filter(name -> !name.equals("everyday"))
                .toList();

        assertThat(packed).containsExactlyInAnyOrderElementsOf(Checks.slugs());
    }

    @Test
    void a_slug_that_nobody_checks_has_no_page() {
        assertThat(Page.of("falls-off-the-bench")).isEmpty();
        assertThat(Page.of("slides-in-grip")).map(Page::slug).contains("slides-in-grip");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_page_has_every_heading_once_in_order_with_words_below(Page page) {
        assertThat(page.title()).isNotBlank();
        assertThat(page.sections()).extracting(Page.Section::heading).containsExactly(Heading.values());
        assertThat(page.sections()).extracting(Page.Section::text).noneMatch(String::isBlank);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_page_names_its_source(Page page) {
        assertThat(page.source().text()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_page_is_written_in_the_words_of_the_house(Page page) {
        assertThat(HouseWords.against(page.text().replace(page.section(Heading.SOURCE), "")))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void a_printed_page_is_readable_in_a_hundred_columns(Page page) {
        assertThat(page.text().lines()).allMatch(line -> line.length() <= 96);
        assertThat(page.text()).startsWith(page.slug() + "\n" + page.title() + "\n");
    }

    @Test
    void a_page_says_how_often_it_fires_on_the_everyday_set_ups() {
        Everyday counted = new Everyday(30, List.of(new Everyday.Count("slides-in-grip", 1, 2)));

        assertThat(counted.sentence("slides-in-grip"))
                .isEqualTo("On 1 of the 30 everyday set-ups; a note stands on 2 of them.");
        assertThat(counted.sentence("tips-in-grip")).isEqualTo("On 0 of the 30 everyday set-ups.");
        assertThat(Everyday.read(counted.text())).isEqualTo(counted);
    }
}
