package setwright.plan.cut;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.cutting.LimitName;
import setwright.geometry.Side;
import setwright.job.DrawnOperation;
import setwright.plan.Rows;
import setwright.plan.cut.LimitRule.Choice;
import setwright.plan.part.Heights;

/** How fast a tool is planned to go into a hole: as the table says, or what spindle, grip and tool leave of that. */
public final class HoleChoice {
    /** Share of power, grip and strength that is planned; the torque of a drill is even (common practice). */
    private static final double IN_HAND = 0.9;

    private static final List<LimitName> LOADED =
            List.of(LimitName.SPINDLE_POWER, LimitName.SPINDLE_TORQUE, LimitName.SHANK_GRIP, LimitName.TOOL_BREAKAGE);

    private final CutQuestion question;

    private HoleChoice(CutQuestion question) {
        this.question = question;
    }

    /** Empty where there are no speeds for the tool. */
    public static Optional<HoleChoice> of(Side up, DrawnOperation drafted, Rows rows, Heights heights, CutPlace place) {
        return rows.cutter(drafted.cutter().value())
                .flatMap(cutter -> rows.cuttingSpeed(cutter.form(), cutter.material())
                        .map(row -> new CutQuestion("", up, drafted, cutter, row, heights, place, rows)))
                .map(HoleChoice::new);
    }

    /** Share of the drafted feed that the limits leave. */
    public double share() {
        double wanted = question.operation().feed().value().inside();
        return wanted <= 0
                ? 1
                : new LimitSearch(this::used, IN_HAND).upTo(wanted).value() / wanted;
    }

    private Map<LimitName, Double> used(double feed) {
        Map<LimitName, Double> used = new EnumMap<>(LimitName.class);
        Cuts.cut(question.with(Choice.FEED, feed)).map(OperationCut::limits).orElse(List.of()).stream()
                .filter(limit -> LOADED.contains(limit.name()))
                .forEach(limit -> used.merge(limit.name(), limit.used(), Math::max));
        return used;
    }
}
