package setwright.file.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.job.Blank;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Pattern;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.ShopRow;

class WrittenNamesTest {
    @ParameterizedTest
    @ValueSource(classes = {Blank.class, Feature.class, Holding.class, Pattern.class, ShopRow.class})
    void every_record_of_a_family_has_a_written_kind_of_its_own(Class<?> family) {
        assertThat(kinds(family)).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void written_kinds_are_the_names_of_the_kinds() {
        assertThat(kinds(Blank.class)).containsExactlyElementsOf(names(Blank.Kind.values()));
        assertThat(kinds(Feature.class)).containsExactlyElementsOf(names(Feature.Kind.values()));
        assertThat(kinds(Holding.class)).containsExactlyElementsOf(names(Holding.Kind.values()));
        assertThat(kinds(Pattern.class)).containsExactlyInAnyOrderElementsOf(names(Pattern.Kind.values()));
        assertThat(kinds(Cutter.class)).containsExactlyInAnyOrderElementsOf(names(Cutter.Form.values()));
    }

    @Test
    void constants_are_written_in_lower_case_with_hyphens() {
        assertThat(WrittenNames.constant(Holder.Style.SPINDLE_COLLET)).isEqualTo("spindle-collet");
    }

    private static List<String> kinds(Class<?> family) {
        return permitted(family).map(WrittenNames::kind).toList();
    }

    private static Stream<Class<?>> permitted(Class<?> type) {
        return type.isRecord()
                ? Stream.of(type)
                : Stream.of(type.getPermittedSubclasses()).flatMap(WrittenNamesTest::permitted);
    }

    private static List<String> names(Enum<?>[] constants) {
        return Stream.of(constants).map(WrittenNames::constant).toList();
    }
}
