package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static setwright.quantity.Symbol.symbol;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import setwright.Rounds;

/** Every formula is written as it is computed; every rule names its source. */
class WrittenFormulasTest {
    private static final Source TEST = Source.of("computed in this test");
    private static final Symbol SPEED = symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 1000);
    private static final Symbol DIAMETER = symbol("d", "diameter", Unit.MM, 1, 200);
    private static final Symbol TURNS = symbol("n", "spindle speed", Unit.RPM, 1, 100_000);

    /** Stands here to be found by the scan. */
    @SuppressWarnings("unused")
    private static final Formula SPINDLE_SPEED =
            new Formula("n = 1000 v / (π d)", TURNS, List.of(SPEED, DIAMETER), a -> 2 * a[0] / a[1], TEST);

    private static final PublishedRules PUBLISHED = PublishedRules.in(
            new ClassFileImporter().withImportOption(new DoNotIncludeTests()).importPackages("setwright"));

    @TestFactory
    List<DynamicTest> every_formula_is_written_as_it_is_computed() {
        return PUBLISHED.formulas().stream()
                .map(formula -> DynamicTest.dynamicTest(formula.text(), () -> assertWrittenAsComputed(formula)))
                .toList();
    }

    @Test
    void every_letter_has_a_range_that_can_be_drawn_from() {
        assertThat(PUBLISHED.formulas()).allSatisfy(formula -> {
            List<Symbol> symbols = new ArrayList<>(formula.inputs());
            symbols.add(formula.result());
            assertThat(symbols).extracting(Symbol::letter).doesNotHaveDuplicates();
            assertThat(symbols).allSatisfy(WrittenFormulasTest::assertSane);
            assertThat(new FormulaByText(formula).unused()).as(formula.text()).isEmpty();
        });
    }

    @Test
    void every_rule_says_what_it_gives_and_names_its_source() {
        assertThat(PUBLISHED.all()).allSatisfy(rule -> {
            assertThat(rule.name()).isNotBlank();
            assertThat(rule.text()).isNotBlank();
            assertThat(rule.source().text()).as(rule.text()).hasSizeGreaterThan(5);
        });
    }

    @Test
    void the_scan_finds_private_formulas() {
        JavaClasses here = new ClassFileImporter().importClasses(WrittenFormulasTest.class);
        assertThat(PublishedRules.in(here).formulas()).containsExactly(SPINDLE_SPEED);
    }

    @Test
    void a_formula_written_rightly_is_let_pass() {
        assertWrittenAsComputed(SPINDLE_SPEED);
        assertWrittenAsComputed(ofAngle("h = d sin(φ / 2)", a -> a[0] * Math.sin(a[1] / 2)));
        assertWrittenAsComputed(ofAngle("h = d sin φ", a -> a[0] * Math.sin(a[1])));
        assertWrittenAsComputed(ofAngle("h = d/2 · 2^-2 √(φ)", a -> a[0] / 8 * Math.sqrt(Math.toDegrees(a[1]))));
        assertWrittenAsComputed(ofAngle("h = -d² max(φ, 60)", a -> -a[0] * a[0] * Math.max(Math.toDegrees(a[1]), 60)));
    }

    @Test
    void a_formula_written_wrongly_is_found() {
        assertThat(disagreement(spindleSpeed("n = 1000 v / d"))).isPresent();
        assertThat(disagreement(spindleSpeed("n = 1000 v / π d"))).isPresent();
        assertThat(disagreement(spindleSpeed("n = 100 v / (π d)"))).isPresent();
        assertThat(disagreement(spindleSpeed("n = 1000 d / (π v)"))).isPresent();
        assertThat(disagreement(spindleSpeed("n = 1000.00001 v / (π d)"))).isPresent();
        assertThat(disagreement(ofAngle("h = d cos(φ)", a -> a[0] * Math.sin(a[1]))))
                .isPresent();
        assertThat(disagreement(ofAngle("h = d sin(φ)", a -> a[0] * Math.sin(Math.toDegrees(a[1])))))
                .isPresent();
    }

    @Test
    void an_arc_comes_out_in_the_unit_of_the_result() {
        Symbol half = symbol("α", "half angle", Unit.DEG, 0, 90);
        Symbol share = symbol("s", "share", Unit.NONE, 0, 1);
        ToDoubleFunction<double[]> kernel = a -> Math.asin(a[0]);

        assertWrittenAsComputed(new Formula("α = arcsin(s)", half, List.of(share), kernel, TEST));
        assertWrittenAsComputed(
                new Formula("r = arcsin(s)", symbol("r", "arc of one", Unit.NONE, 0, 2), List.of(share), kernel, TEST));
    }

    private static Formula spindleSpeed(String text) {
        return new Formula(text, TURNS, List.of(SPEED, DIAMETER), a -> 2 * a[0] / a[1], TEST);
    }

    private static Formula ofAngle(String text, ToDoubleFunction<double[]> kernel) {
        Symbol angle = symbol("φ", "angle", Unit.DEG, 1, 179);
        return new Formula(text, symbol("h", "height", Unit.MM, 0, 200), List.of(DIAMETER, angle), kernel, TEST);
    }

    private static Optional<String> disagreement(Formula formula) {
        return new FormulaByText(formula).disagreement(Rounds.random(51));
    }

    private static void assertWrittenAsComputed(Formula formula) {
        FormulaByText byText = new FormulaByText(formula);
        Rounds.each(
                52, (random, round) -> assertThat(byText.disagreement(random)).isEmpty());
    }

    private static void assertSane(Symbol symbol) {
        assertThat(symbol.letter()).isNotBlank();
        assertThat(symbol.name()).as(symbol.letter()).isNotBlank();
        assertThat(symbol.least()).as(symbol.letter()).isFinite();
        assertThat(symbol.greatest()).as(symbol.letter()).isFinite().isGreaterThan(symbol.least());
    }
}
