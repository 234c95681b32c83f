package setwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import setwright.quantity.Amount.Form;

/**
 * One text on its way to a quantity: a sum of products of numbers with units, with brackets. A unit belongs to the
 * product before it ({@code 3/4*2 in} is an inch and a half), and at the end of a sum of bare numbers to all of it; a smaller unit right behind a larger adds to it
 * ({@code 34°15'}).
 */
final class Expression {
    private static final int LONGEST = 200;
    private static final List<List<Unit>> FOLLOWING = List.of(
            List.of(Unit.DEG, Unit.ARC_MINUTE, Unit.ARC_SECOND),
            List.of(Unit.HOUR, Unit.MINUTE, Unit.SECOND),
            List.of(Unit.FT, Unit.IN));

    private final String typed;
    private final Unit bare;
    private final Complaints complaints;
    private final Scan scan;
    private final TreeMap<Integer, String> unitsToWrite = new TreeMap<>();

    /**
     * What was read.
     *
     * @param text as typed, with the unit where a number stood bare
     * @param inside in the unit that the program computes in
     * @param value the double nearest to that
     */
    record Read(String text, Rational inside, double value) {}

    /** One term of a sum, and the place where it ends. */
    private record Term(Amount amount, int end) {}

    Expression(Measure measure, Unit bare, String text) {
        this.typed = text.strip();
        this.bare = bare;
        this.complaints = new Complaints(typed, measure, bare);
        this.scan = new Scan(typed, measure.accepted(), complaints);
    }

    Read read() {
        if (typed.isEmpty()) {
            throw complaints.nothing();
        }
        if (typed.length() > LONGEST) {
            throw complaints.tooLong(LONGEST);
        }
        if (typed.indexOf(',') >= 0) {
            throw complaints.comma();
        }
        Amount all = sum();
        if (!scan.atEnd()) {
            throw scan.leftOver();
        }
        Rational inside = all.inside(bare);
        double value = inside.nearest();
        if (Double.isInfinite(value) || (value == 0 && inside.signum() != 0)) {
            throw complaints.beyond();
        }
        return new Read(written(all), inside, value);
    }

    /** As typed, with the unit behind each number that stood bare. */
    private String written(Amount all) {
        if (all.unit() == null && !bare.symbol().isEmpty()) {
            return (all.form() == Form.SUM ? "(" + typed + ")" : typed) + bare.afterNumber();
        }
        StringBuilder written = new StringBuilder(typed);
        for (Map.Entry<Integer, String> unit : unitsToWrite.descendingMap().entrySet()) {
            written.insert(unit.getKey(), unit.getValue());
        }
        return written.toString();
    }

    private Amount sum() {
        List<Term> terms = new ArrayList<>();
        terms.add(new Term(product(), scan.end()));
        while (true) {
            if (scan.passes('+')) {
                terms.add(new Term(product(), scan.end()));
            } else if (scan.passes('-')) {
                terms.add(new Term(product().negate(), scan.end()));
            } else {
                return terms.size() == 1 ? terms.get(0).amount() : added(terms);
            }
        }
    }

    private Amount added(List<Term> terms) {
        Unit first = terms.stream()
                .map(term -> term.amount().unit())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        if (first == null || coversAll(first, terms)) {
            return new Amount(sum(terms, term -> term.amount().number()), first, Form.SUM);
        }
        return new Amount(sum(terms, term -> inside(term, first)).over(first.factor()), first, Form.SUM);
    }

    private static Rational sum(List<Term> terms, Function<Term, Rational> number) {
        return terms.stream().map(number).reduce(Rational.ZERO, Rational::plus);
    }

    /** Whether the unit stands at the end of the sum only: {@code 20 + 3.5 mm}; {@code 90 - 15'} means no 90 minutes. */
    private boolean coversAll(Unit unit, List<Term> terms) {
        boolean readTogether = unit.dimension() == Dimension.ANGLE || unit.dimension() == Dimension.TIME;
        return scan.endsInUnit()
                && !readTogether
                && terms.subList(0, terms.size() - 1).stream()
                        .allMatch(term -> term.amount().unit() == null);
    }

    /** A bare number beside one with a unit is read only where both mean the same unit. */
    private Rational inside(Term term, Unit beside) {
        if (term.amount().unit() == null) {
            if (!bare.factor().equals(beside.factor())) {
                throw complaints.bareBeside(beside);
            }
            unitsToWrite.put(term.end(), bare.afterNumber());
        }
        return term.amount().inside(bare);
    }

    private Amount product() {
        Amount product = signed(false);
        while (true) {
            if (scan.passes('*')) {
                product = times(product, signed(false));
            } else if (scan.passes('/')) {
                product = over(product, signed(true));
            } else {
                return product;
            }
        }
    }

    private Amount times(Amount left, Amount right) {
        if (left.unit() != null && right.unit() != null) {
            throw complaints.multiplies(left.unit(), right.unit());
        }
        Unit unit = left.unit() == null ? right.unit() : left.unit();
        return new Amount(left.number().times(right.number()), unit, Form.CLOSED);
    }

    private Amount over(Amount left, Amount right) {
        if (right.number().signum() == 0) {
            throw complaints.dividesByZero();
        }
        if (right.unit() != null && (left.unit() != null || right.form() != Form.WRITTEN)) {
            throw complaints.dividesBy(right.unit());
        }
        Unit unit = right.unit() == null ? left.unit() : right.unit();
        return new Amount(left.number().over(right.number()), unit, Form.CLOSED);
    }

    private Amount signed(boolean behindStroke) {
        if (scan.passes('-')) {
            return unsigned(behindStroke).negate();
        }
        scan.passes('+');
        return unsigned(behindStroke);
    }

    private Amount unsigned(boolean behindStroke) {
        if (scan.passes('(')) {
            return bracket();
        }
        Rational number = scan.number(behindStroke);
        Unit unit = scan.unit();
        return unit == null ? Amount.written(number, null) : compound(number, unit);
    }

    private Amount bracket() {
        int opened = scan.place();
        Amount within = sum();
        if (!scan.passes(')')) {
            throw scan.atEnd() ? complaints.notClosed(opened) : scan.leftOver();
        }
        Unit unit = scan.unit();
        if (unit == null) {
            return new Amount(within.number(), within.unit(), Form.CLOSED);
        }
        if (within.unit() != null) {
            throw complaints.secondUnit(within.unit(), unit);
        }
        return Amount.written(within.number(), unit);
    }

    /** Degrees with minutes and seconds, hours with minutes, feet with inches. */
    private Amount compound(Rational first, Unit unit) {
        Rational sum = first;
        Rational above = first;
        Unit unitAbove = unit;
        while (!below(unitAbove).isEmpty() && scan.numberFollows()) {
            Rational number = scan.number(false);
            Unit smaller = scan.unit();
            if (smaller == null || !below(unitAbove).contains(smaller)) {
                throw complaints.needsSmallerUnit(unitAbove);
            }
            Rational part = number.times(smaller.factor());
            if (!above.isWhole() || part.compareTo(unitAbove.factor()) >= 0) {
                throw complaints.needsWholeAbove(unitAbove, smaller);
            }
            sum = sum.plus(part.over(unit.factor()));
            above = number;
            unitAbove = smaller;
        }
        return Amount.written(sum, unit);
    }

    private static List<Unit> below(Unit unit) {
        for (List<Unit> row : FOLLOWING) {
            if (row.contains(unit)) {
                return row.subList(row.indexOf(unit) + 1, row.size());
            }
        }
        return List.of();
    }
}
