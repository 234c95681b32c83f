package setwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.plan.room.SetUpRoom;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.reach.Level;
import setwright.shop.ShopRow;

/** One set-up of the check as text: holding, heights, grip, knee, operations. */
final class SetUpText {
    private static final double SAME = 1e-6;

    private final JobCheck.Worked check;
    private final Plan plan;
    private final DrawnSetUp setUp;
    private final Printing printing;

    SetUpText(JobCheck.Worked check, DrawnSetUp setUp, Printing printing) {
        this.check = check;
        plan = check.plan();
        this.setUp = setUp;
        this.printing = printing;
    }

    String text() {
        return "Set-up " + setUp.id() + ": " + setUp.title() + "\n"
                + Wrapped.behind("  Holding  ", holding(setUp.holding()))
                + seat()
                + plan.room().setUp(setUp.id()).map(this::levels).orElse("")
                + grip()
                + plan.room().setUp(setUp.id()).map(this::knee).orElse("")
                + "\n" + new OperationTables(check, setUp, printing).text();
    }

    private String holding(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> vise((DrawnVise) holding);
        };
    }

    private String vise(DrawnVise vise) {
        String grip = vise.grip().value().name().toLowerCase(Locale.ROOT);
        String packing = vise.onParallels()
                ? "; " + row(vise.parallels().value()) + ", "
                        + vise.parallelHeight().value().text() + " high, " + inset(vise)
                : "; the part sits on the vise bed";
        return row(vise.vise().value()) + ", closed " + grip + packing;
    }

    private String inset(DrawnVise vise) {
        double inset = vise.parallelInset().value().inside();
        return inset < SAME ? "against the jaws" : length(inset) + " in from the jaws";
    }

    private String row(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse(id);
    }

    private String seat() {
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> Wrapped.behind(
                        "           ",
                        "gripped " + length(stage.heights().gripDepth()) + " deep, "
                                + length(stage.heights().startTop()
                                        - stage.heights().jawTop())
                                + " of the largest blank stand above the jaws"))
                .orElse("");
    }

    private String levels(SetUpRoom room) {
        String said = room.levels().stream()
                .map(level -> level.name() + " " + number(level))
                .collect(Collectors.joining(", "));
        return Wrapped.behind("  Heights  ", "over the table, " + unit() + ": " + said);
    }

    private String number(Level level) {
        return printing.number(Measure.LENGTH, level.height());
    }

    private String unit() {
        return Measure.LENGTH.unit(printing.units()).symbol();
    }

    private String grip() {
        Optional<OperationHold> weakest = plan.hold().weakest(setUp.id());
        if (weakest.isEmpty()) {
            return "";
        }
        OperationHold hold = weakest.get();
        String gives = hold.firstToGive().isEmpty() ? "" : "; it " + hold.motion() + " first, at " + hold.firstToGive();
        return Wrapped.behind(
                "  Grip     ",
                "bears " + times(hold.factor().expected()) + " times the load of " + hold.operation() + " as expected, "
                        + times(hold.factor().pessimistic()) + " times at worst" + gives);
    }

    static String times(double factor) {
        return factor >= 99 ? "99 or more" : new Printing(setwright.quantity.UnitSystem.METRIC).factor(factor);
    }

    private String knee(SetUpRoom room) {
        List<String> heights = new ArrayList<>();
        for (double height : room.kneeHeights()) {
            heights.add(length(height) + " for "
                    + room.operations().stream()
                            .filter(operation -> Math.abs(operation.kneeHeight() - height) < 0.005)
                            .map(OperationRoom::operation)
                            .collect(Collectors.joining(", ")));
        }
        return Wrapped.behind(
                "  Knee     ",
                Plural.of(heights.size(), "height", "heights") + " (nose over the table, quill in): "
                        + String.join("; ", heights) + ". " + Plural.of(room.touchOffs(), "touch-off", "touch-offs")
                        + " of Z.");
    }

    private String length(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }
}
