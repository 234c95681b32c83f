package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.list;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;
import static setwright.quantity.Symbol.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.quantity.DrillNames;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.NamedSize;
import setwright.quantity.Reading;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Worked;
import setwright.quantity.fit.Fit;
import setwright.quantity.fit.Fits;
import setwright.quantity.fit.Limits;
import setwright.quantity.fit.ToleranceGrade;

/** Named sizes, limits, and mass. */
final class SizeFigures {
    private static final int NEIGHBOURS = 4;
    private static final double SAME = 1e-9;
    private static final Symbol MASS = symbol("m", "mass", Unit.KG, 0, 1e6);
    private static final Symbol DENSITY = symbol("ρ", "density", Unit.KG_PER_M3, 500, 20_000);
    private static final Source VOLUME = Source.of("computed: density times volume");

    static final Formula BLOCK = new Formula(
            "m = ρ l w h / 10^9",
            MASS,
            List.of(DENSITY, size("l", "length"), size("w", "width"), size("h", "height")),
            v -> v[0] * v[1] * v[2] * v[3],
            VOLUME);
    static final Formula ROUND = new Formula(
            "m = ρ π d^2 l / (4 10^9)",
            MASS,
            List.of(DENSITY, size("d", "diameter"), size("l", "length")),
            v -> v[0] * Math.PI / 4 * v[1] * v[1] * v[2],
            VOLUME);
    static final Formula TUBE = new Formula(
            "m = ρ π (D^2 - d^2) l / (4 10^9)",
            MASS,
            List.of(
                    DENSITY,
                    symbol("D", "outside diameter", Unit.MM, 100, 1000),
                    symbol("d", "bore", Unit.MM, 1, 99),
                    size("l", "length")),
            v -> v[0] * Math.PI / 4 * (v[1] * v[1] - v[2] * v[2]) * v[3],
            VOLUME);

    private SizeFigures() {}

    private static Symbol size(String letter, String name) {
        return symbol(letter, name, Unit.MM, 0.1, 1000);
    }

    static List<Figure> all() {
        return List.of(drillSize(), fit(), grade(), mass());
    }

    private static Figure drillSize() {
        return new Figure(
                "drill-size",
                "The drill {name} or {diameter} measures",
                List.of(
                        words("name").maybe("diameter is given"),
                        measure("diameter", Measure.LENGTH).upTo(1000).maybe("name is given")),
                List.of("mm", "in", "neighbours [{name, mm, difference}]"),
                SizeFigures::drill);
    }

    private static Answered drill(Asked asked) {
        asked.requireOneOf("name", "diameter");
        String name = asked.has("name") ? asked.words("name") : "";
        double mm = name.isEmpty() ? asked.number("diameter") : named(name);
        Worked size = new Table(
                        "mm",
                        "numbers 1 to 80, letters A to Z and fractions by 1/64 in",
                        Unit.MM,
                        Source.of("the table of drill sizes; 1 in is 25.4 mm"))
                .of(name.isEmpty() ? "typed as a diameter" : name, mm);
        List<List<Answer>> rows = new ArrayList<>();
        for (NamedSize near : DrillNames.published().near(new Length(mm), NEIGHBOURS + 1)) {
            boolean itself = !name.isEmpty() && Math.abs(near.size().mm() - mm) < SAME;
            if (!itself && rows.size() < NEIGHBOURS) {
                rows.add(List.of(
                        new Answer.Words("name", near.name()),
                        Answer.of("mm", near.size().mm(), Unit.MM),
                        Answer.of("difference", near.size().mm() - mm, Unit.MM)));
            }
        }
        return Answered.of(
                Answer.of("mm", size, Unit.MM), Answer.of("in", mm, Unit.IN), new Answer.Rows("neighbours", rows));
    }

    private static double named(String name) {
        Optional<Length> size = DrillNames.published().size(name);
        return size.isPresent() ? size.get().mm() : new Reading(UnitSystem.METRIC).inside(Measure.LENGTH, name);
    }

    private static Figure fit() {
        return new Figure(
                "fit",
                "{size} {class} may be",
                List.of(measure("size", Measure.LENGTH).within(1, 180), words("class")),
                List.of(
                        "upper µm",
                        "lower µm",
                        "of a pair: hole-upper, hole-lower, shaft-upper, shaft-lower, largest-clearance,"
                                + " smallest-clearance µm"),
                SizeFigures::limits);
    }

    private static Answered limits(Asked asked) {
        double size = asked.number("size");
        String written = asked.words("class").strip();
        if (!written.contains("/")) {
            Limits limits = Fits.listed().limits(size, written);
            return Answered.of(limit("upper", limits, limits.upper()), limit("lower", limits, limits.lower()));
        }
        Fit fit = Fits.listed().pair(size, written);
        return Answered.of(
                limit("hole-upper", fit.hole(), fit.hole().upper()),
                limit("hole-lower", fit.hole(), fit.hole().lower()),
                limit("shaft-upper", fit.shaft(), fit.shaft().upper()),
                limit("shaft-lower", fit.shaft(), fit.shaft().lower()),
                Answer.of("largest-clearance", fit.hole().upper() - fit.shaft().lower(), Unit.UM),
                Answer.of("smallest-clearance", fit.hole().lower() - fit.shaft().upper(), Unit.UM));
    }

    private static Answer limit(String name, Limits limits, double mm) {
        Table table = new Table(name, Fits.LIMITS.text(), Unit.UM, limits.source());
        return Answer.of(name, table.of(limits.written(), mm), Unit.UM);
    }

    private static Figure grade() {
        return new Figure(
                "tolerance-grade",
                "{grade} at {diameter} is",
                List.of(measure("diameter", Measure.LENGTH).within(1, 250), words("grade")),
                List.of("tolerance µm"),
                asked -> {
                    ToleranceGrade grade = ToleranceGrade.of(asked.number("diameter"), asked.words("grade"));
                    Table table = new Table(
                            "tolerance",
                            "standard tolerance of the grade in the band of the size",
                            Unit.UM,
                            grade.source());
                    return Answered.of(Answer.of(
                            "tolerance",
                            table.of("IT" + grade.grade(), grade.tolerance(), asked.value("diameter")),
                            Unit.UM));
                });
    }

    private static Figure mass() {
        return new Figure(
                "mass",
                "A {shape} of {sizes} weighs",
                List.of(
                        choice("shape", "block", "round", "tube"),
                        list("sizes", Measure.LENGTH).above(),
                        LoadFigures.MATERIAL,
                        measure("density", Measure.DENSITY).maybe("that of the material counts")),
                List.of("mass kg"),
                SizeFigures::weigh);
    }

    private static Answered weigh(Asked asked) {
        asked.requireOneOf("density", "material");
        Given density = asked.has("density")
                ? asked.value("density")
                : LoadFigures.ofMaterial(
                        asked.material(), "density", asked.material().density().inside(), Unit.KG_PER_M3, "density");
        List<Given> sizes = asked.list("sizes");
        int wanted = asked.is("shape", "round") ? 2 : 3;
        if (sizes.size() != wanted) {
            throw Refusal.of(
                    "sizes", "a " + asked.words("shape") + " has " + wanted + ": block l,w,h; round d,l; tube D,d,l.");
        }
        Worked mass = switch (asked.words("shape")) {
            case "block" -> BLOCK.of(density, sizes.get(0), sizes.get(1), sizes.get(2));
            case "round" -> ROUND.of(density, sizes.get(0), sizes.get(1));
            default -> tube(density, sizes);
        };
        return Answered.of(Answer.of("mass", mass, Unit.KG));
    }

    private static Worked tube(Given density, List<Given> sizes) {
        if (sizes.get(1).inside() >= sizes.get(0).inside()) {
            throw Refusal.of("sizes", "the bore is no smaller than the outside; accepted: D,d,l with d below D.");
        }
        return TUBE.of(density, sizes.get(0), sizes.get(1), sizes.get(2));
    }
}
