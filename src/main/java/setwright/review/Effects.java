package setwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.time.TimePlan.OperationTime;

/**
 * What came of changes: times and cautions of two plans, put to the changes made where they arise. Changes of one
 * operation share what happened to it; what happened where nothing was changed goes to the changes of its set-up, else to
 * those of the job, else to all.
 */
record Effects(Plan old, Findings oldFindings, Plan changed, Findings newFindings) {
    /** Less than this is rounding, s. */
    private static final double NOISE = 1e-6;

    List<Change> on(List<Change> changes) {
        List<Caution> added = notIn(newFindings, oldFindings);
        List<Caution> cleared = notIn(oldFindings, newFindings);
        List<Change> told = new ArrayList<>();
        for (Change change : changes) {
            told.add(change.with(new Change.Effect(
                    time(change, changes), mine(change, added, changes), mine(change, cleared, changes))));
        }
        return told;
    }

    /** Stops and cautions of one that the other has not, or not as bad. */
    private static List<Caution> notIn(Findings one, Findings other) {
        return one.cautions().stream()
                .filter(caution -> caution.severity() != Severity.NOTE)
                .filter(caution -> other.find(caution.identity())
                        .filter(same -> same.severity().compareTo(caution.severity()) <= 0)
                        .isEmpty())
                .toList();
    }

    private List<Caution> mine(Change change, List<Caution> cautions, List<Change> changes) {
        return cautions.stream()
                .filter(caution -> falls(on(caution), change, changes))
                .toList();
    }

    /** Whether something falls on a change: on all changes at the first of the levels at which there are any. */
    private static boolean falls(Stream<Predicate<Change>> levels, Change change, List<Change> changes) {
        return levels.filter(level -> changes.stream().anyMatch(level))
                .findFirst()
                .filter(level -> level.test(change))
                .isPresent();
    }

    /** Where to look for the changes that a caution comes from, the likeliest first. */
    private Stream<Predicate<Change>> on(Caution caution) {
        Predicate<Change> operation = at(caution.setUp() + "/" + caution.operation());
        Predicate<Change> setUp = at(caution.setUp());
        return switch (caution.place().about()) {
            case OPERATION -> Stream.of(operation, setUp, at(""), inside(caution.setUp()), change -> true);
            case SET_UP -> Stream.of(setUp, operation, at(""), inside(caution.setUp()), change -> true);
        };
    }

    private Predicate<Change> at(String scope) {
        return change -> scope(change).equals(scope);
    }

    private Predicate<Change> inside(String setUp) {
        return change -> scope(change).startsWith(setUp + "/");
    }

    /** The operation or set-up that a change was made to; empty for the job. */
    private String scope(Change change) {
        return Stream.concat(operations(), setUps())
                .filter(path -> change.where().equals(path) || change.where().startsWith(path + "/"))
                .findFirst()
                .orElse("");
    }

    private Stream<String> operations() {
        return Stream.of(old, changed)
                .flatMap(plan -> plan.drawnUp().setUps().stream())
                .flatMap(setUp -> setUp.operations().stream().map(operation -> setUp.id() + "/" + operation.id()));
    }

    private Stream<String> setUps() {
        return Stream.of(old, changed)
                .flatMap(plan -> plan.drawnUp().setUps().stream())
                .map(setUp -> setUp.id());
    }

    /** Each operation's change of time falls on its own changes, else on those of its set-up, else on those of the job. */
    private double time(Change change, List<Change> changes) {
        double sum = 0;
        for (String path : operations().distinct().toList()) {
            String setUp = path.substring(0, path.indexOf('/'));
            if (falls(Stream.of(at(path), at(setUp), at(""), any -> true), change, changes)) {
                sum += time(changed, path) - time(old, path);
            }
        }
        return Math.abs(sum) < NOISE ? 0 : sum;
    }

    private static double time(Plan plan, String path) {
        return plan.time().operations().stream()
                .filter(time -> path.equals(time.setUp() + "/" + time.operation()))
                .mapToDouble(OperationTime::whole)
                .sum();
    }
}
