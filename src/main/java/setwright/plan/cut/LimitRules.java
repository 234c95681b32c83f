package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import setwright.cutting.LimitName;
import setwright.job.DrawnUp;
import setwright.plan.Rows;
import setwright.plan.cut.LimitRule.Binds;
import setwright.plan.cut.LimitRule.Choice;
import setwright.plan.part.PartPlan;

/**
 * Searches where each limit of an operation would bind. The cut is worked out afresh at every trial, so that the rule says
 * what the plan would say; on demand only.
 */
public final class LimitRules {
    /** How far a choice is looked at, in both directions, as a multiple of where it stands. */
    private static final double REACH = 8;

    private static final int LADDER = 6;
    private static final int CLOSER = 4;

    private LimitRules() {}

    /** One for each choice that the operation has; empty where its cut cannot be worked out. */
    public static List<LimitRule> of(DrawnUp drawnUp, Rows rows, PartPlan part, String operation) {
        return Cuts.question(drawnUp, rows, part, operation).stream()
                .flatMap(question -> choices(question).stream().map(choice -> rule(question, choice)))
                .toList();
    }

    /** How deep a pass of a milled operation may be; empty where there are no passes and where its cut cannot be worked out. */
    public static Optional<DepthAdvice> depth(DrawnUp drawnUp, Rows rows, PartPlan part, String operation) {
        return Cuts.question(drawnUp, rows, part, operation)
                .filter(question -> PassChoice.inPasses(question.operation().kind()))
                .filter(question -> Cuts.cut(question).isPresent())
                .map(question -> PassChoice.of(question).advice());
    }

    private static List<Choice> choices(CutQuestion question) {
        return question.operation().kind().inHole() ? List.of(Choice.FEED, Choice.STICK_OUT) : List.of(Choice.values());
    }

    private static LimitRule rule(CutQuestion question, Choice choice) {
        Trial trial = new Trial(question, choice);
        double now = trial.now();
        return new LimitRule(choice, now, now > 0 ? binds(trial::at, now, trial.most()) : List.of());
    }

    /**
     * The crossings of every limit on a ladder of choices in equal ratios.
     *
     * @param used shares at a choice
     * @param most the largest choice that there is
     */
    static List<Binds> binds(DoubleFunction<Map<LimitName, Double>> used, double now, double most) {
        double least = now / REACH;
        double step = StrictMath.pow(Math.min(most, REACH * now) / least, 1.0 / LADDER);
        List<Binds> found = new ArrayList<>();
        double low = least;
        Map<LimitName, Double> below = used.apply(low);
        for (int i = 1; i <= LADDER; i++) {
            double high = low * step;
            Map<LimitName, Double> above = used.apply(high);
            for (Map.Entry<LimitName, Double> limit : below.entrySet()) {
                double other = above.getOrDefault(limit.getKey(), limit.getValue());
                if (limit.getValue() > 1 != other > 1) {
                    double at = crossing(choice -> share(used.apply(choice), limit.getKey()), low, high);
                    found.add(new Binds(limit.getKey(), at, other > 1));
                }
            }
            low = high;
            below = above;
        }
        found.sort(Comparator.comparingDouble(Binds::at).thenComparing(Binds::limit));
        return found;
    }

    private static double share(Map<LimitName, Double> used, LimitName limit) {
        return Math.max(1e-9, used.getOrDefault(limit, 0.0));
    }

    /** Shares follow powers of the choice nearly enough: a straight line in logarithms, drawn closer each time. */
    private static double crossing(DoubleFunction<Double> share, double low, double high) {
        double from = low;
        double to = high;
        double atFrom = StrictMath.log(share.apply(from));
        double atTo = StrictMath.log(share.apply(to));
        double between = from;
        for (int i = 0; i < CLOSER; i++) {
            double part = Math.min(0.98, Math.max(0.02, atFrom / (atFrom - atTo)));
            between = from * StrictMath.pow(to / from, part);
            double there = StrictMath.log(share.apply(between));
            if (there > 0 == atFrom > 0) {
                from = between;
                atFrom = there;
            } else {
                to = between;
                atTo = there;
            }
        }
        return between;
    }

    /** The same operation with one choice changed. */
    private record Trial(CutQuestion question, Choice choice) {
        double now() {
            return switch (choice) {
                case DEPTH -> question.operation().depth().value().inside();
                case WIDTH -> Math.min(question.operation().width().value().inside(), diameter());
                case FEED -> question.operation().feed().value().inside();
                case STICK_OUT -> question.operation().stickOut().value().inside();
            };
        }

        double most() {
            return switch (choice) {
                case DEPTH -> question.cutter().fluteLength().inside();
                case WIDTH -> diameter();
                case FEED, STICK_OUT -> Double.POSITIVE_INFINITY;
            };
        }

        private double diameter() {
            return question.cutter().diameter().inside();
        }

        Map<LimitName, Double> at(double value) {
            CutQuestion changed = question.with(choice, value);
            return question.operation().kind().inHole()
                    ? PassTrial.shares(
                            Cuts.cut(changed).map(OperationCut::limits).orElse(List.of()))
                    : new PassTrial(question).with(choice, value);
        }
    }
}
