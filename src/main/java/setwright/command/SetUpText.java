package setwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.HoldingEdits;
import setwright.job.InWords;
import setwright.job.Tilt;
import setwright.plan.Plan;
import setwright.plan.hold.GripRangeWords;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.plan.room.SetUpRoom;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.reach.Level;
import setwright.sheet.JawWords;
import setwright.sheet.OnTable;
import setwright.sheet.TiltWords;
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
                + straps()
                + cover()
                + (setUp.holding().kind() == DrawnHolding.Kind.VISE ? seat() : above())
                + tilt()
                + plan.room().setUp(setUp.id()).map(this::levels).orElse("")
                + grip()
                + plan.room().setUp(setUp.id()).map(this::knee).orElse("")
                + "\n" + new OperationTables(check, setUp, printing).text();
    }

    private String holding(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> vise((DrawnVise) holding);
            case TABLE -> table((DrawnTable) holding);
            case DEVICE -> device((DrawnDevice) holding);
        };
    }

    private String table(DrawnTable table) {
        return strapped(words().table(table));
    }

    private String device(DrawnDevice device) {
        return strapped(words().device(device));
    }

    /** What it lies on, and the straps over it, each on a line of its own below. */
    private String strapped(String on) {
        return HoldingEdits.straps(setUp.holding()).isEmpty() ? on : on + ", held down by " + words().count();
    }

    private String straps() {
        return words().straps().stream()
                .map(strap -> Wrapped.behind("           ", strap.name() + ": " + words().strap(strap)))
                .collect(Collectors.joining());
    }

    private String cover() {
        String said = words().cover();
        return said.isEmpty() ? "" : Wrapped.behind("           ", said);
    }

    private OnTable words() {
        return new OnTable(plan, setUp, printing);
    }

    private String vise(DrawnVise vise) {
        String grip = InWords.word(vise.grip().value());
        String packing = vise.onParallels()
                ? "; " + row(vise.parallels().value()) + ", "
                        + vise.parallelHeight().value().text() + " high, " + inset(vise)
                : "; the part sits " + new JawWords(vise).seat(plan.rows());
        int parts = vise.parts().value();
        String gang = parts > 1 ? "; " + parts + " parts side by side" : "";
        String jaws = vise.otherJaws() ? " with " + row(vise.jaws().value()) : "";
        String besides =
                new JawWords(vise).said().stream().map(said -> "; " + said).collect(Collectors.joining());
        return row(vise.vise().value()) + jaws + ", closed " + grip + gang + besides + packing;
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

    private String above() {
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> Wrapped.behind(
                        "           ",
                        "the largest blank stands "
                                + length(stage.heights().startTop()) + " over the table, what clamps it up to "
                                + length(stage.heights().jawTop())))
                .orElse("");
    }

    private String tilt() {
        Tilt tilt = setUp.tilt();
        return tilt == null ? "" : Wrapped.behind("  Tilted   ", TiltWords.of(tilt));
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
                        + times(hold.factor().pessimistic()) + " times at worst" + gives + range());
    }

    private String range() {
        return plan.gripRange(setUp.id())
                .map(range -> "; " + new GripRangeWords(range, printing).text())
                .orElse("");
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
                        + " of Z"
                        + (room.movedZeros() == 0
                                ? "."
                                : ", " + Plural.of(room.movedZeros(), "zero", "zeros") + " moved by the knee's dial."));
    }

    private String length(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }
}
