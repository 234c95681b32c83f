package setwright.window.model;

import java.util.List;
import java.util.stream.Collectors;
import setwright.job.DrawnOperation;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.InWords;
import setwright.job.Job;
import setwright.plan.Rows;
import setwright.shop.Cutter;
import setwright.shop.ShopRow;

/** What an operation does, in the trade's words. */
final class OperationWords {
    private final Job job;
    private final Rows rows;

    OperationWords(Job job, Rows rows) {
        this.job = job;
        this.rows = rows;
    }

    /** For instance {@code Drill 6.8 mm}. */
    String brief(DrawnOperation operation) {
        return switch (operation.kind()) {
            case FACE -> "Face " + sides(operation);
            case SPOT -> "Spot " + Words.count(holes(operation), "hole");
            case DRILL -> "Drill " + size(operation);
            case REAM -> "Ream " + sizes(operation, OperationWords::fitted);
            case TAP -> "Tap " + sizes(operation, OperationWords::thread);
            case COUNTERSINK, COUNTERBORE, SPOTFACE ->
                operation.kind().verb() + " " + Words.count(holes(operation), "hole");
            case BORE -> "Bore " + sizes(operation, OperationWords::fitted);
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE ->
                operation.kind().verb();
        };
    }

    /** For instance {@code Drill 6.8 mm, 4 holes through}. */
    String full(DrawnOperation operation) {
        return switch (operation.kind()) {
            case FACE -> brief(operation) + " to " + across(operation);
            case SPOT, COUNTERSINK, COUNTERBORE, SPOTFACE -> brief(operation);
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE ->
                brief(operation) + ": " + notes(operation);
            case DRILL, REAM, TAP, BORE ->
                brief(operation) + ", " + Words.count(holes(operation), "hole") + depth(operation);
        };
    }

    /** A row as the shop calls it. */
    String row(String id) {
        return rows.shop().row(id).map(ShopRow::name).orElse("nothing in the shop fits");
    }

    private String size(DrawnOperation operation) {
        return rows.cutter(operation.cutter().value())
                .map(Cutter::diameter)
                .map(diameter -> diameter.text())
                .orElse("");
    }

    private static String fitted(Hole hole) {
        String fit = hole.fit();
        return fit == null
                ? hole.size().nominal().text()
                : number(hole.size().nominal().text()) + " " + fit;
    }

    private static String thread(Hole hole) {
        String thread = hole.thread();
        return thread == null ? hole.size().nominal().text() : thread;
    }

    /** A fit is written behind the bare number: 12 H7. */
    private static String number(String text) {
        return text.endsWith(" mm") ? text.substring(0, text.length() - 3) : text;
    }

    private String sizes(DrawnOperation operation, java.util.function.Function<Hole, String> size) {
        return features(operation).stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .map(size)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String notes(DrawnOperation operation) {
        return features(operation).stream().map(InWords::feature).distinct().collect(Collectors.joining(", "));
    }

    private String sides(DrawnOperation operation) {
        return features(operation).stream()
                .map(feature -> "the " + Words.of(feature.side()))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String across(DrawnOperation operation) {
        return features(operation).stream()
                .filter(Face.class::isInstance)
                .map(feature -> ((Face) feature).across().nominal().text())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String depth(DrawnOperation operation) {
        List<Hole> holes = features(operation).stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .toList();
        if (holes.stream().allMatch(Hole::through)) {
            return " through";
        }
        return ", " + operation.depth().value().text() + " deep";
    }

    private int holes(DrawnOperation operation) {
        return features(operation).stream()
                .filter(Hole.class::isInstance)
                .mapToInt(feature -> ((Hole) feature).place().holes())
                .sum();
    }

    private List<Feature> features(DrawnOperation operation) {
        return operation.features().stream()
                .flatMap(id -> job.plan().features().stream()
                        .filter(feature -> feature.id().equals(id)))
                .toList();
    }
}
