package setwright.plan.cut;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.plan.cut.LimitRule.Choice;

/** What a milled pass would use of its limits; the cut alone, without working and second opinions, as searches ask it often. */
record PassTrial(CutQuestion question) {
    Map<LimitName, Double> with(Choice choice, double value) {
        return shares(MilledCut.limits(question.with(choice, value)));
    }

    static Map<LimitName, Double> shares(List<Limit> limits) {
        Map<LimitName, Double> used = new EnumMap<>(LimitName.class);
        limits.forEach(limit -> used.merge(limit.name(), limit.used(), Math::max));
        return used;
    }
}
