package setwright.window.model;

import java.util.Comparator;
import java.util.List;
import setwright.job.OperationField;
import setwright.plan.cut.LimitRule.Binds;
import setwright.plan.cut.LimitRule.Choice;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** Puts where limits bind on scales that one reads. */
public final class LimitScales {
    /** What binds so many times further out than the choice stands is left off its scale. */
    private static final double FAR = 4;

    private static final double BEYOND = 1.15;

    private LimitScales() {}

    /** One scale for every choice that something binds. */
    public static List<LimitRule> of(List<setwright.plan.cut.LimitRule> rules, Printing printing) {
        return rules.stream()
                .map(rule -> scale(rule, printing))
                .filter(rule -> !rule.pins().isEmpty())
                .toList();
    }

    private static LimitRule scale(setwright.plan.cut.LimitRule rule, Printing printing) {
        Measure measure = measure(rule.choice());
        List<LimitRule.Pin> pins = rule.binds().stream()
                .filter(Binds::from)
                .filter(binds -> binds.at() <= FAR * rule.now())
                .sorted(Comparator.comparingDouble(Binds::at))
                .map(binds -> new LimitRule.Pin(binds.limit().words(), binds.at(), printing.of(measure, binds.at())))
                .toList();
        double end = Math.max(
                rule.now(), pins.stream().mapToDouble(LimitRule.Pin::at).max().orElse(0));
        return new LimitRule(
                key(rule.choice()),
                name(rule.choice()),
                rule.now(),
                printing.of(measure, rule.now()),
                BEYOND * end,
                pins);
    }

    private static Measure measure(Choice choice) {
        return choice == Choice.FEED ? Measure.FEED : Measure.LENGTH;
    }

    private static String key(Choice choice) {
        return switch (choice) {
            case DEPTH -> OperationField.DEPTH.key();
            case WIDTH -> OperationField.WIDTH.key();
            case FEED -> OperationField.FEED.key();
            case STICK_OUT -> OperationField.STICK_OUT.key();
        };
    }

    private static String name(Choice choice) {
        return switch (choice) {
            case DEPTH -> "depth";
            case WIDTH -> "width";
            case FEED -> "feed";
            case STICK_OUT -> "stick-out";
        };
    }
}
