package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.cutting.FeedForCut;
import setwright.cutting.SafeSpeed;
import setwright.cutting.Selector;
import setwright.cutting.SpeedAndFeed;
import setwright.job.Operation;
import setwright.plan.CutSpeed;
import setwright.plan.part.Mouths;
import setwright.quantity.Given;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.thread.Threads;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Holder;
import setwright.shop.Tap;

/** Speed and feed: what the material asks for, in the steps that this machine has. */
final class SpeedPencil {
    /** A power quill feed may be this much above the wanted one (common practice). */
    private static final double QUILL_FEED_OVER = 1.25;

    private final Drafting drafting;
    private final Operation operation;
    private final Operation.Kind kind;
    private final Optional<Cutter> cutter;
    private final Setting setting;

    SpeedPencil(Drafting drafting, Operation operation, Optional<Cutter> cutter, Setting setting) {
        this.drafting = drafting;
        this.operation = operation;
        kind = operation.kind();
        this.cutter = cutter;
        this.setting = setting;
    }

    /**
     * What is drawn up before speed and feed.
     *
     * @param stickOut mm
     * @param life asked of the edge, s
     * @param underSkin whether it is the first cut in a face with its skin
     */
    record Setting(
            Operation.Method method,
            Operation.Coolant coolant,
            Optional<Holder> holder,
            double stickOut,
            double life,
            boolean underSkin) {}

    Typed<SpindleSpeed> speed() {
        if (setting.method().byHand() || kind == Operation.Kind.SCRIBE) {
            return drafting.speed(0);
        }
        return cutter.flatMap(tool -> row(tool).map(row -> drafting.speed(speed(tool, row))))
                .orElse(drafting.speed(0));
    }

    private double speed(Cutter tool, CuttingSpeed row) {
        Given life = Given.of("tool life asked", setting.life(), Unit.MINUTE, "toolLife");
        double cutting = new CutSpeed(kind, setting.coolant(), setting.underSkin(), life)
                .of(row, drafting.rows().material().group())
                .inside();
        double ceiling = SafeSpeed.planned(tool, setting.holder().orElse(null))
                .map(SafeSpeed::most)
                .orElse(Double.POSITIVE_INFINITY);
        return Selector.spindle(drafting.rows().machine())
                .choose(new Selector.Wanted(
                        SpeedAndFeed.spindleSpeed(cutting, diameter(tool)),
                        Selector.Wanted.mostOver(tool.material()),
                        ceiling))
                .value();
    }

    /** @param width of a milling pass, mm */
    Typed<Speed> feed(Typed<SpindleSpeed> speed, double width) {
        return cutter.map(tool -> drafting.feed(feed(tool, speed.inside(), width)))
                .orElse(drafting.feed(0));
    }

    private double feed(Cutter tool, double turning, double width) {
        if (kind == Operation.Kind.TAP) {
            return SpeedAndFeed.tableFeed(
                    turning, 1, Threads.listed().read(((Tap) tool).thread()).pitch());
        }
        Optional<CuttingSpeed> row = row(tool);
        if (row.isEmpty() || turning <= 0) {
            return 0;
        }
        double perEdge = FeedForCut.of(row.get(), conditions(tool, width)).inside();
        return switch (setting.method()) {
            case TABLE_FEED, WOUND_DOWN -> alongTable(SpeedAndFeed.tableFeed(turning, tool.teeth(), perEdge));
            case QUILL_POWER -> SpeedAndFeed.tableFeed(turning, 1, quillFeed(perEdge));
            case QUILL_LEVER, QUILL_IN_BITES, TAP_BY_HAND_GUIDED, TAP_UNDER_POWER, TAP_WITH_HEAD, TAP_ON_BENCH ->
                SpeedAndFeed.tableFeed(turning, 1, perEdge);
        };
    }

    private FeedForCut.Conditions conditions(Cutter tool, double width) {
        double diameter = diameter(tool);
        boolean side = kind == Operation.Kind.STEP || kind == Operation.Kind.PROFILE;
        return new FeedForCut.Conditions(
                tool.form(), diameter, side ? Math.min(width, diameter) : diameter, setting.stickOut());
    }

    /** The diameter that is cut: in a hole what it is opened to. */
    private double diameter(Cutter tool) {
        return operation.features().stream()
                .flatMap(id -> drafting.hole(id).stream())
                .findFirst()
                .map(hole -> Mouths.diameter(kind, tool, hole))
                .orElse(tool.diameter().inside());
    }

    private double alongTable(double wanted) {
        return Selector.along(drafting.rows().machine().x())
                .choose(new Selector.Wanted(wanted, 1, Double.POSITIVE_INFINITY))
                .value();
    }

    private double quillFeed(double wanted) {
        List<Double> feeds = drafting.rows().machine().quillFeeds().stream()
                .map(Typed::inside)
                .toList();
        return Selector.steps(feeds)
                .choose(new Selector.Wanted(wanted, QUILL_FEED_OVER, Double.POSITIVE_INFINITY))
                .value();
    }

    private Optional<CuttingSpeed> row(Cutter tool) {
        return drafting.rows().cuttingSpeed(tool.form(), tool.material());
    }
}
