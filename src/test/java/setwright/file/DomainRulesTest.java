package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DomainRulesTest {
    static Stream<Component> components() {
        return Stream.of(
                        NumberRules.ANY_SIGN.stream(),
                        NumberRules.ZERO_OR_MORE.stream(),
                        NumberRules.RANGES.stream().map(NumberRules.Range::component),
                        NumberRules.RISING.stream().flatMap(List::stream),
                        FormRules.TOGETHER.stream().flatMap(List::stream),
                        FormRules.NOT_EMPTY.stream(),
                        FormRules.WORDS.stream(),
                        FormRules.IDS.stream(),
                        FormRules.DATES.stream(),
                        References.ALL.stream().map(References.Reference::component))
                .flatMap(components -> components);
    }

    @ParameterizedTest
    @MethodSource("components")
    void every_rule_names_a_component_that_is_there(Component component) {
        assertThat(Arrays.stream(component.owner().getMethods())
                        .filter(method -> method.getParameterCount() == 0)
                        .map(Method::getName))
                .contains(component.key());
    }
}
