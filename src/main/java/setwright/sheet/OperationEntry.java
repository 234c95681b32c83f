package setwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Band;
import setwright.quantity.Measure;

/** One operation on the sheet. */
final class OperationEntry {
    private final Shown shown;
    private final DrawnOperation operation;

    OperationEntry(Shown shown, DrawnOperation operation) {
        this.shown = shown;
        this.operation = operation;
    }

    Block block(int number) {
        List<String> lines = new ArrayList<>();
        lines.add(shown.cutter(operation) + " in " + shown.holder(operation) + ", "
                + operation.stickOut().value().text() + " out");
        lines.add(shown.speed(operation.speed().value().inside()) + ", " + shown.feed(operation) + ", "
                + coolant(operation.coolant().value()));
        shown.plan().cut().operation(operation.id()).ifPresent(cut -> {
            lines.add(cut(cut));
            cut.surfaces().forEach(left -> lines.add(left(left)));
        });
        HoleWords.of(shown, operation).ifPresent(words -> lines.addAll(words.lines()));
        shown.plan().room().operation(operation.id()).ifPresent(room -> lines.addAll(room(room)));
        if (!operation.reason().isEmpty()) {
            lines.add("set by hand: " + operation.reason());
        }
        lines.addAll(MillWords.lines(shown, operation));
        String pencilled = pencilled();
        if (!pencilled.isEmpty()) {
            lines.add("in pencil: " + pencilled);
        }
        return new Block.Entry(Integer.toString(number), shown.what(operation), time(), lines);
    }

    private String time() {
        return shown.plan()
                .time()
                .operation(operation.id())
                .map(time -> shown.minutes(time.whole()))
                .orElse("");
    }

    private static String coolant(Operation.Coolant coolant) {
        return switch (coolant) {
            case DRY -> "dry";
            case BRUSHED_OIL -> "oil brushed on";
            case FLOOD -> "flood coolant";
            case MIST -> "mist";
        };
    }

    private String cut(OperationCut cut) {
        return operation.kind().inHole()
                ? "point goes " + shown.length(cut.depth()) + " below the surface"
                : shown.length(cut.depth()) + " deep x " + shown.length(cut.width()) + " wide, "
                        + (cut.passes() == 1 ? "1 pass" : cut.passes() + " passes") + ", "
                        + Shown.word(operation.direction().value());
    }

    /** Most readers want to know which way, and how sure it is. */
    private String left(SurfaceLeft left) {
        boolean on = left.inside() >= 0;
        double size = Math.abs(left.inside());
        Band band = left.band();
        return "about " + shown.printing().band(Measure.SMALL_LENGTH, size, size)
                + (on ? " stays on the " : " is taken too much from the ")
                + left.surface().words() + " ("
                + shown.printing()
                        .band(Measure.SMALL_LENGTH, on ? band.low() : -band.high(), on ? band.high() : -band.low())
                + ")";
    }

    private List<String> room(OperationRoom room) {
        List<String> lines = new ArrayList<>();
        double quill = room.quillUsed().inside();
        lines.add("knee: nose " + shown.length(room.kneeHeight()) + " over the table, "
                + (quill <= 0 ? "quill in and locked" : "quill out " + shown.length(quill) + " at the deepest"));
        nearest(room).ifPresent(lines::add);
        lines.add(
                room.change().works()
                        ? "tool changed " + room.change().where()
                        : "no place to change this tool: "
                                + shown.length(room.change().room()) + " free, "
                                + shown.length(room.change().needed()) + " needed");
        return lines;
    }

    private Optional<String> nearest(OperationRoom room) {
        return Optional.ofNullable(room.nearest())
                .map(near -> near.touches()
                        ? "meets the " + near.body().name() + " by " + shown.clearance(-near.clearance())
                        : "least clearance " + shown.clearance(near.clearance()) + " to the "
                                + near.body().name());
    }

    private String pencilled() {
        Map<String, Drawn<?>> values = new LinkedHashMap<>();
        values.put("cutter", operation.cutter());
        values.put("holder", operation.holder());
        values.put("stick-out", operation.stickOut());
        values.put("depth", operation.depth());
        values.put("width", operation.width());
        values.put("stock for the last pass", operation.finish());
        values.put("last pass", operation.lastPass());
        values.put("tool life", operation.toolLife());
        values.put("direction", operation.direction());
        values.put("coolant", operation.coolant());
        values.put("method", operation.method());
        values.put("speed", operation.speed());
        values.put("feed", operation.feed());
        values.put("knee height", operation.kneeHeight());
        String names = values.entrySet().stream()
                .filter(value -> value.getValue().pencilled())
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", "));
        return values.values().stream().allMatch(Drawn::pencilled) ? "everything" : names;
    }
}
