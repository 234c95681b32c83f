package setwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import setwright.quantity.WrittenFormula.Token;

/**
 * A formula evaluated from its text alone, in the units it is written in: a second way to its result, which knows nothing
 * of the kernel.
 */
final class FormulaByText {
    private static final double RELATIVE = 1e-9;
    private static final double WIDE = 100;

    private final Formula formula;
    private final List<String> letters;
    private final Expression expression;

    FormulaByText(Formula formula) {
        this.formula = formula;
        this.letters = formula.inputs().stream().map(Symbol::letter).toList();
        StringBuilder text = new StringBuilder();
        List<Token> tokens = WrittenFormula.of(formula).tokens();
        for (int i = 0; i < tokens.size(); i++) {
            boolean bracketFollows = i + 1 < tokens.size() && tokens.get(i + 1).kind() == WrittenFormula.Kind.OPEN;
            if (tokens.get(i).kind() == WrittenFormula.Kind.FUNCTION && !bracketFollows) {
                text.append(translated(tokens.get(i)))
                        .append('(')
                        .append(translated(tokens.get(++i)))
                        .append(')');
            } else {
                text.append(translated(tokens.get(i)));
            }
        }
        this.expression = new ExpressionBuilder(text.toString())
                .functions(functions())
                .variables(letters.stream().map(this::variable).toList().toArray(String[]::new))
                .build();
    }

    /** The result in the unit of the formula, for inputs in theirs. */
    double evaluate(double[] inputs) {
        for (int i = 0; i < inputs.length; i++) {
            expression.setVariable("x" + i, inputs[i]);
        }
        return expression.evaluate();
    }

    /** Compares text and kernel at one random place in the range of the symbols; says where they differ. */
    Optional<String> disagreement(RandomGenerator random) {
        double[] inputs = new double[letters.size()];
        double[] inside = new double[letters.size()];
        for (int i = 0; i < inputs.length; i++) {
            Symbol symbol = formula.inputs().get(i);
            inputs[i] = anywhere(symbol, random);
            inside[i] = symbol.unit().toInside(inputs[i]);
        }
        double written = evaluate(inputs);
        double computed = formula.result().unit().fromInside(formula.kernel().applyAsDouble(inside));
        boolean alike = Double.isFinite(written)
                && Math.abs(written - computed) <= RELATIVE * Math.max(Math.abs(written), Math.abs(computed));
        return alike
                ? Optional.empty()
                : Optional.of(formula.text() + " is " + written + " as written, " + computed + " as computed, for "
                        + letters + " = " + java.util.Arrays.toString(inputs));
    }

    /** Letters that the text does not use, though they are inputs. */
    List<String> unused() {
        List<String> unused = new ArrayList<>(letters);
        WrittenFormula.of(formula).tokens().forEach(token -> unused.remove(token.text()));
        return unused;
    }

    private static double anywhere(Symbol symbol, RandomGenerator random) {
        double least = symbol.least();
        double greatest = symbol.greatest();
        double share = random.nextDouble();
        return least > 0 && greatest / least > WIDE
                ? least * Math.pow(greatest / least, share)
                : least + (greatest - least) * share;
    }

    private String variable(String letter) {
        return "x" + letters.indexOf(letter);
    }

    private String translated(Token token) {
        return switch (token.kind()) {
            case LETTER -> variable(token.text());
            case FUNCTION -> token.text().equals("√") ? "root" : "our" + token.text();
            case NUMBER -> token.text().equals("π") ? "(" + Math.PI + ")" : token.text();
            case SIGN -> token.text().equals("·") ? "*" : token.text();
            case OPEN, CLOSE, MINUS, COMMA -> token.text();
        };
    }

    private List<Function> functions() {
        double angle = formula.inputs().stream().map(Symbol::unit).anyMatch(Unit.DEG::equals) ? Math.PI / 180 : 1;
        double inverse = formula.result().unit() == Unit.DEG ? Math.PI / 180 : 1;
        return List.of(
                function("oursin", x -> Math.sin(x * angle)),
                function("ourcos", x -> Math.cos(x * angle)),
                function("ourtan", x -> Math.tan(x * angle)),
                function("ourarcsin", x -> Math.asin(x) / inverse),
                function("ourarccos", x -> Math.acos(x) / inverse),
                function("ourarctan", x -> Math.atan(x) / inverse),
                function("ourln", Math::log),
                function("ourexp", Math::exp),
                function("root", Math::sqrt),
                function("ourmin", Math::min),
                function("ourmax", Math::max));
    }

    private static Function function(String name, DoubleUnaryOperator of) {
        return new Function(name, 1) {
            @Override
            public double apply(double... arguments) {
                return of.applyAsDouble(arguments[0]);
            }
        };
    }

    private static Function function(String name, DoubleBinaryOperator of) {
        return new Function(name, 2) {
            @Override
            public double apply(double... arguments) {
                return of.applyAsDouble(arguments[0], arguments[1]);
            }
        };
    }
}
