package setwright.figures;

import static setwright.figures.Input.measure;

import java.util.ArrayList;
import java.util.List;
import setwright.location.layout.Triangle;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Procedure;
import setwright.quantity.Unit;

/** Any triangle from three of its sides and angles. */
final class TriangleFigure {
    private static final List<String> SIDES = List.of("a", "b", "c");
    private static final List<String> ANGLES = List.of("A", "B", "C");
    private static final String LEFT_OUT = "three of the six are given";

    static final Figure FIGURE = new Figure(
            "triangle",
            "A triangle of {a} {b} {c} and {A} {B} {C} opposite has",
            List.of(side("a"), side("b"), side("c"), angle("A"), angle("B"), angle("C")),
            List.of("a mm", "b mm", "c mm", "A °", "B °", "C °", "also [{a, b, c, A, B, C}] where there are two"),
            TriangleFigure::solve);

    private TriangleFigure() {}

    private static Input side(String key) {
        return measure(key, Measure.LENGTH).maybe(LEFT_OUT);
    }

    private static Input angle(String key) {
        return measure(key, Measure.ANGLE).upTo(179.999_999).maybe(LEFT_OUT);
    }

    private static Answered solve(Asked asked) {
        List<Triangle> found = Triangle.of(new Triangle.Known(known(SIDES, asked), known(ANGLES, asked)));
        Given[] from = SIDES.stream().filter(asked::has).map(asked::value).toArray(Given[]::new);
        List<Answer> answers = new ArrayList<>();
        for (Answer answer : row(found.get(0))) {
            Answer.Number number = (Answer.Number) answer;
            if (!asked.has(number.name())) {
                Procedure rule =
                        new Procedure(number.name(), Triangle.SOLVE.steps(), number.unit(), Triangle.SOLVE.source());
                answers.add(Answer.of(number.name(), rule.of(number.inside(), "", from), number.unit()));
            }
        }
        if (found.size() == 1) {
            return new Answered(answers, List.of(), List.of());
        }
        answers.add(new Answer.Rows("also", List.of(row(found.get(1)))));
        return new Answered(answers, List.of("two triangles have these: the other stands under also"), List.of());
    }

    private static double[] known(List<String> keys, Asked asked) {
        return keys.stream().mapToDouble(key -> asked.numberOr(key, Double.NaN)).toArray();
    }

    private static List<Answer> row(Triangle triangle) {
        return List.of(
                Answer.of("a", triangle.a(), Unit.MM),
                Answer.of("b", triangle.b(), Unit.MM),
                Answer.of("c", triangle.c(), Unit.MM),
                Answer.of("A", triangle.alpha(), Unit.DEG),
                Answer.of("B", triangle.beta(), Unit.DEG),
                Answer.of("C", triangle.gamma(), Unit.DEG));
    }
}
