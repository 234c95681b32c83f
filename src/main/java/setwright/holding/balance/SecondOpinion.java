package setwright.holding.balance;

import java.math.BigDecimal;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The same programme by ojAlgo, for an answer of ours that lacks its certificate. Forces and motion are solved for
 * separately, so that the certificate compares two solutions.
 */
final class SecondOpinion {
    private final Cones cones;

    SecondOpinion(Cones cones) {
        this.cones = cones;
    }

    /** A motion that shows that nothing is balanced; its certificate is bad where the part stands. */
    Solution nothing() {
        double[] dual = motion(null);
        return new Solution(Solution.Proves.NOTHING, new double[cones.columns()], 0, dual);
    }

    /** The largest push of a load column of length one, or at least {@code enough}. */
    Solution push(double[] load, double enough) {
        double[] forces = forces(load, enough);
        double push = forces[cones.columns()];
        double[] weights = Arrays.copyOf(forces, cones.columns());
        if (push >= enough * (1 - 1e-9)) {
            return new Solution(Solution.Proves.AT_LEAST, weights, push, new double[cones.rows()]);
        }
        return new Solution(Solution.Proves.EXACTLY, weights, push, motion(load));
    }

    private double[] forces(double[] load, double enough) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Expression[] rows = new Expression[cones.rows()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = model.newExpression("row " + i).level(cones.right()[i]);
        }
        for (int id = 0; id < cones.columns(); id++) {
            Variable weight = model.newVariable("edge " + id).lower(0);
            set(rows, weight, cones.column(id));
        }
        Variable push = model.newVariable("push").lower(0).upper(enough).weight(1);
        set(rows, push, load);
        return numbers(model.maximise());
    }

    private static void set(Expression[] rows, Variable variable, double[] column) {
        for (int i = 0; i < rows.length; i++) {
            if (column[i] != 0) {
                rows[i].set(variable, column[i]);
            }
        }
    }

    /** The motion that bounds the push of a load, or without one a motion within one that gains most power. */
    private double[] motion(double @Nullable [] load) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Variable[] rates = new Variable[cones.rows()];
        for (int i = 0; i < rates.length; i++) {
            rates[i] = model.newVariable("rate " + i).weight(cones.right()[i]);
            if (load == null) {
                rates[i].lower(-1).upper(1);
            } else {
                rates[i].lower((BigDecimal) null);
            }
        }
        for (int id = 0; id < cones.columns(); id++) {
            power(model.newExpression("edge " + id).lower(0), rates, cones.column(id));
        }
        if (load != null) {
            power(model.newExpression("load").level(1), rates, load);
        }
        return numbers(model.minimise());
    }

    private static void power(Expression expression, Variable[] rates, double[] column) {
        for (int i = 0; i < rates.length; i++) {
            if (column[i] != 0) {
                expression.set(rates[i], column[i]);
            }
        }
    }

    private static double[] numbers(Optimisation.Result result) {
        double[] numbers = new double[(int) result.count()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = result.doubleValue(i);
        }
        return numbers;
    }
}
