package setwright.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.job.JobRecord;
import setwright.plan.NotChecked;
import setwright.plan.Plan;

/** Puts every check to a plan; the first stage of judging, quick enough to follow typing. */
public final class Judge {
    private static final Comparator<Findings.Judged> WORST_FIRST = Comparator.comparing(
                    (Findings.Judged one) -> one.caution().severity())
            .thenComparing(one -> !one.open());

    private final JobRecord record;
    private final List<Findings.Judged> judged = new ArrayList<>();
    private final Map<String, NotChecked> notChecked = new LinkedHashMap<>();
    private final List<Margin> margins = new ArrayList<>();
    private int looked;

    private Judge(Plan plan) {
        record = plan.job().record();
        plan.notChecked().forEach(this::unlooked);
    }

    /** The same plan gives the same findings. */
    public static Findings judge(Plan plan) {
        return judge(plan, Checks.ALL);
    }

    static Findings judge(Plan plan, List<Check> checks) {
        Judge judge = new Judge(plan);
        checks.forEach(check -> check.look(plan).forEach(judge::take));
        judge.judged.sort(WORST_FIRST);
        return new Findings(judge.judged, List.copyOf(judge.notChecked.values()), judge.looked, judge.margins);
    }

    private void take(Finding finding) {
        switch (finding.kind()) {
            case HOLDS -> looked(((Finding.Holds) finding).margin());
            case FAILS -> {
                Finding.Fails fails = (Finding.Fails) finding;
                looked(fails.margin());
                judged.add(new Findings.Judged(fails.caution(), Acceptances.standing(fails.caution(), record)));
            }
            case UNLOOKED -> unlooked(((Finding.Unlooked) finding).what());
        }
    }

    private void looked(@Nullable Margin margin) {
        looked++;
        if (margin != null) {
            margins.add(margin);
        }
    }

    /** What the plan already said of a check at a place is not said again. */
    private void unlooked(NotChecked what) {
        notChecked.putIfAbsent(what.check() + "/" + what.setUp() + "/" + what.operation(), what);
    }
}
