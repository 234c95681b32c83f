package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.quantity.Formula;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The errors between a datum and a feature, added up: worst case and root sum square; millimetres.
 *
 * @param compared what the sums are: along an axis, or the distance from the true place
 */
public record ErrorBudget(List<Contributor> contributors, Compared compared) {
    static final double ROOT_TWO = StrictMath.sqrt(2);
    /** One contributor that takes more than this share of what is allowed does not average out (common practice). */
    private static final double DOMINANT = 0.6;

    public static final Procedure WORST_CASE = new Procedure(
            "worst case",
            List.of("add every half-width and every known bias"),
            Unit.MM,
            Source.of("F. Scholz 1995, Tolerance Stack Analysis Methods"
                    + " (wixlib.com/document/6dda5_tolerance-stack-analysis-methods-university-of-washington.html)"));
    public static final Procedure ROOT_SUM_SQUARE = new Procedure(
            "root sum square",
            List.of(
                    "square every half-width, add the squares, take the root",
                    "add every known bias, which does not average out",
                    "where one contributor alone takes over 60 % of what is allowed, the worst case counts instead"),
            Unit.MM,
            Source.of("F. Scholz 1995, Tolerance Stack Analysis Methods"
                    + " (wixlib.com/document/6dda5_tolerance-stack-analysis-methods-university-of-washington.html);"
                    + " the 60 % common practice"));
    /** A position tolerance is the diameter of the zone: the distance from the true place may be half of it. */
    public static final Formula RADIAL_LIMIT = new Formula(
            "r = T / 2",
            symbol("r", "distance allowed from the true place", Unit.MM, 0, 5),
            List.of(symbol("T", "position tolerance, diameter of the zone", Unit.MM, 0.001, 10)),
            v -> radialLimit(v[0]),
            Source.of("from memory: ISO 1101, position with a cylindrical zone"));

    /** What is compared with the tolerance. */
    public enum Compared {
        ALONG_AN_AXIS("error along an axis"),
        FROM_TRUE_PLACE("distance from the true place");

        private final String words;

        Compared(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public enum Verdict {
        /** Holds even in the worst case. */
        HOLDS,
        /** Holds by root sum square; the worst case does not. */
        ALL_BUT_WORST_CASE,
        /** The set-up cannot hold the tolerance. */
        OFF
    }

    /** A budget against its limit: {@code decisive} is the sum that counts. */
    public record Judged(Verdict verdict, Compared compared, double limit, double decisive, double worstCase) {
        public double margin() {
            return limit - decisive;
        }
    }

    public ErrorBudget {
        contributors = List.copyOf(contributors);
    }

    /** For a size or a coordinate with ± limits. */
    public static ErrorBudget alongAnAxis(List<Contributor> contributors) {
        return new ErrorBudget(contributors, Compared.ALONG_AN_AXIS);
    }

    /** For a position: errors that X and Y have alike count √2 times. */
    public static ErrorBudget fromTruePlace(List<Contributor> contributors) {
        return new ErrorBudget(contributors.stream().map(Contributor::radial).toList(), Compared.FROM_TRUE_PLACE);
    }

    public static double radialLimit(double positionTolerance) {
        return positionTolerance / 2;
    }

    public double bias() {
        return sum(Contributor.Kind.BIAS);
    }

    public double worstCase() {
        return bias() + sum(Contributor.Kind.SPREAD);
    }

    public double rootSumSquare() {
        return bias() + StrictMath.sqrt(squares());
    }

    /** The contributor with the largest amount, the first of equals; empty where there is none. */
    public Optional<Contributor> largest() {
        return contributors.stream().max(Comparator.comparingDouble(Contributor::amount));
    }

    /** The sum that counts when the largest contributor is made half as large. */
    public double withLargestHalved(double limit) {
        Optional<Contributor> largest = largest();
        return new ErrorBudget(
                        contributors.stream()
                                .map(one ->
                                        largest.filter(found -> found == one).isPresent()
                                                ? one.of(one.amount() / 2)
                                                : one)
                                .toList(),
                        compared)
                .decisive(limit);
    }

    /** The first spread that alone takes over 60 % of what is allowed, so that the worst case counts; empty where none does. */
    public Optional<Contributor> dominant(double limit) {
        return contributors.stream()
                .filter(one -> one.kind() == Contributor.Kind.SPREAD)
                .filter(one -> one.amount() > DOMINANT * limit)
                .findFirst();
    }

    /**
     * What is compared with the limit: the root sum square, or the worst case where one contributor dominates. It never
     * gets less when a contributor grows.
     */
    public double decisive(double limit) {
        return dominant(limit).isPresent() ? worstCase() : rootSumSquare();
    }

    /** @param limit half the width of a ± tolerance, or the radial limit of a position */
    public Judged against(double limit) {
        double decisive = decisive(limit);
        Verdict verdict =
                decisive > limit ? Verdict.OFF : worstCase() > limit ? Verdict.ALL_BUT_WORST_CASE : Verdict.HOLDS;
        return new Judged(verdict, compared, limit, decisive, worstCase());
    }

    private double sum(Contributor.Kind kind) {
        return contributors.stream()
                .filter(one -> one.kind() == kind)
                .mapToDouble(Contributor::amount)
                .sum();
    }

    private double squares() {
        return contributors.stream()
                .filter(one -> one.kind() == Contributor.Kind.SPREAD)
                .mapToDouble(one -> one.amount() * one.amount())
                .sum();
    }
}
