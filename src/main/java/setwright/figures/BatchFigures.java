package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import java.util.OptionalDouble;
import setwright.batch.BatchTime;
import setwright.batch.BreakEven;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** The time of batches, and what pays. */
final class BatchFigures {
    private BatchFigures() {}

    static List<Figure> all() {
        return List.of(batchTime(), breakEven());
    }

    private static Input minutes(String key) {
        return measure(key, Measure.TIME).from(0);
    }

    private static Figure batchTime() {
        return new Figure(
                "batch-time",
                "{parts} parts with {tools} tools each, {cut} in the cut, {load} to load, {tool-change} a tool change"
                        + " and {set-up} to set up take",
                List.of(
                        count("parts"),
                        count("tools"),
                        minutes("tool-change"),
                        minutes("load"),
                        minutes("cut"),
                        minutes("set-up")),
                List.of(
                        "each-part-complete min",
                        "reversing-order min",
                        "one-tool-through-batch min",
                        "switch-point min"),
                BatchFigures::orders);
    }

    private static Answered orders(Asked asked) {
        Value[] batch = {
            asked.value("parts"),
            asked.value("tools"),
            asked.value("tool-change"),
            asked.value("load"),
            asked.value("cut"),
            asked.value("set-up")
        };
        return Answered.of(
                Answer.of("each-part-complete", BatchTime.EACH_PART_COMPLETE.of(batch), Unit.MINUTE),
                Answer.of("reversing-order", BatchTime.REVERSING_ORDER.of(batch), Unit.MINUTE),
                Answer.of("one-tool-through-batch", BatchTime.ONE_TOOL_THROUGH_BATCH.of(batch), Unit.MINUTE),
                asked.count("tools") < 2
                        ? new Answer.Nothing("switch-point", "min")
                        : Answer.of(
                                "switch-point", BatchTime.SWITCH_POINT.of(batch[0], batch[1], batch[2]), Unit.MINUTE));
    }

    private static Input amount(String key) {
        return measure(key, Measure.RATIO).from(0);
    }

    private static Figure breakEven() {
        return new Figure(
                "break-even",
                "What costs {once} once and brings a part from {before} to {after} pays from",
                List.of(
                        amount("once"),
                        amount("before"),
                        amount("after"),
                        amount("set-up-before").or("0"),
                        amount("set-up-after").or("0")),
                List.of("parts"),
                BatchFigures::pays);
    }

    private static Answered pays(Asked asked) {
        BreakEven even = new BreakEven(
                asked.number("once"),
                asked.number("before"),
                asked.number("after"),
                asked.number("set-up-before"),
                asked.number("set-up-after"));
        OptionalDouble parts = even.parts();
        if (parts.isEmpty()) {
            return Answered.of(new Answer.Nothing("parts", "")).noting("a part is not cheaper with it: it never pays");
        }
        Value equal = BreakEven.PARTS.of(
                asked.value("once"),
                asked.value("before"),
                asked.value("after"),
                asked.value("set-up-after"),
                asked.value("set-up-before"));
        return Answered.of(new Answer.Count("parts", Math.round(parts.getAsDouble())))
                .noting("both cost alike at " + setwright.figures.Input.plain(Math.round(equal.inside() * 100) / 100.0)
                        + " parts: N = (F + B - A) / (b - a)");
    }
}
