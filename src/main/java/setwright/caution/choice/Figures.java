package setwright.caution.choice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import setwright.caution.Caution;
import setwright.caution.Figure;
import setwright.caution.Margin;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/** The figures of a tried plan that speak for a choice: the tightest of each kind. */
record Figures(Tried tried, Printing printing, Predicate<Caution.Place> where) {
    /** The tightest margin that a check of these slugs looked at, in words; empty where none of them had a figure. */
    Optional<String> tightest(List<String> slugs) {
        return tried.findings().margins().stream()
                .filter(margin -> slugs.contains(margin.of()) && where.test(margin.place()))
                .min(Comparator.comparingDouble(margin -> margin.figure().left()))
                .map(this::words);
    }

    private String words(Margin margin) {
        Figure figure = margin.figure();
        boolean fine = figure.unit() == Unit.MM && Math.abs(figure.limit()) < 1;
        String value = of(figure.unit(), figure.value(), fine);
        String limit = of(figure.unit(), figure.limit(), fine);
        return margin.what() + ": " + value + (figure.worseUp() ? " of " : ", asked ") + limit;
    }

    /** To the thousandth of a millimetre where the limit is a small one. */
    private String of(Unit unit, double inside, boolean fine) {
        if (fine) {
            return printing.of(Measure.LENGTH, inside, printing.units() == UnitSystem.METRIC ? 3 : 4);
        }
        return unit == Unit.MM ? printing.of(Measure.LENGTH, inside) : printing.of(unit, inside);
    }
}
