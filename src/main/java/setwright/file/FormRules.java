package setwright.file;

import java.util.List;
import java.util.regex.Pattern;
import setwright.file.json.Place;
import setwright.file.json.Problems;
import setwright.file.json.Tree;
import setwright.file.json.Way;
import setwright.file.shape.HalfRead;
import setwright.file.shape.Shape.Found;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.Pattern.Points;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.StopAt;
import setwright.job.Strapping;
import setwright.quantity.Typed;
import setwright.shop.Axis;
import setwright.shop.CuttingSpeed;
import setwright.shop.Machine;
import setwright.shop.Parallels;
import setwright.shop.ShopRow;

/** What belongs together in a record, what may not be empty, and how ids and dates are written. */
final class FormRules {
    /** Both stand, or neither. */
    static final List<List<Component>> TOGETHER = List.of(
            Component.of(Axis.class, "feedLeast", "feedGreatest"),
            Component.of(Machine.class, "speedLeast", "speedGreatest"));

    /** Lists with at least one item. */
    static final List<Component> NOT_EMPTY = List.of(
            new Component(Parallels.class, "heights"),
            new Component(CuttingSpeed.class, "feeds"),
            new Component(Points.class, "places"),
            new Component(Operation.class, "features"));

    /** Texts with at least one word. */
    static final List<Component> WORDS = List.of(
            new Component(ShopRow.class, "name"),
            new Component(ShopRow.class, "source"),
            new Component(Plannable.Measured.class, "by"));

    static final List<Component> IDS = List.of(
            new Component(ShopRow.class, "id"),
            new Component(Feature.class, "id"),
            new Component(SetUp.class, "id"),
            new Component(Operation.class, "id"),
            new Component(Strapping.class, "id"),
            new Component(StopAt.class, "id"),
            new Component(JobRecord.Remark.class, "id"));

    static final List<Component> DATES = List.of(
            new Component(Plannable.Measured.class, "at"), new Component(MachineAsItStands.class, "headTrammed"));

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");
    private static final Pattern DATE = Pattern.compile("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])(T.*)?");
    private static final Pattern WORD = Pattern.compile(".*\\S.*", Pattern.DOTALL);

    private final Problems problems;

    FormRules(Problems problems) {
        this.problems = problems;
    }

    void check(HalfRead record) {
        text(record, IDS, ID, "letters, digits, hyphens and points, such as s1 or end-mill-hss-10");
        text(record, WORDS, WORD, "at least one word");
        text(record, DATES, DATE, "a date such as 2025-03-14");
        NOT_EMPTY.stream().filter(list -> list.in(record)).forEach(list -> notEmpty(record, list.key()));
        TOGETHER.stream().filter(pair -> pair.get(0).in(record)).forEach(pair -> together(record, pair));
        if (record.type() == Machine.class) {
            speeds(record);
        }
        if (record.type() == Hole.class) {
            thread(record);
        }
        if (record.type() == CuttingSpeed.class) {
            feedsByDiameter(record);
        }
    }

    private void text(HalfRead record, List<Component> components, Pattern pattern, String accepted) {
        for (Component component : components) {
            if (component.in(record)) {
                for (Found found : record.all(component.key())) {
                    if (!pattern.matcher((String) found.value()).matches()) {
                        report(found, accepted);
                    }
                }
            }
        }
    }

    private void notEmpty(HalfRead record, String key) {
        record.tree()
                .get(key)
                .filter(value ->
                        value instanceof Tree.JsonArray array && array.items().isEmpty())
                .ifPresent(list -> report(
                        list.at(), Way.key(record.path(), key), "Found an empty list; accepted here: at least one."));
    }

    private void together(HalfRead record, List<Component> pair) {
        String first = pair.get(0).key();
        String second = pair.get(1).key();
        if (record.has(first) != record.has(second)) {
            String there = record.has(first) ? first : second;
            report(
                    record.tree().at(),
                    record.path(),
                    "Found " + there + " alone; " + first + " and " + second + " stand together or are both left out.");
        }
    }

    private void speeds(HalfRead record) {
        boolean range = record.has("speedLeast") || record.has("speedGreatest");
        boolean steps = record.tree()
                .get("steps")
                .filter(value ->
                        value instanceof Tree.JsonArray array && !array.items().isEmpty())
                .isPresent();
        if (range == steps && record.has("steps")) {
            report(
                    record.tree().at(),
                    record.path(),
                    "Found " + (range ? "both steps and a range of speeds" : "neither steps nor a range of speeds")
                            + "; a machine has steps, or speedLeast and speedGreatest with steps left empty.");
        }
    }

    private void thread(HalfRead record) {
        record.one("make").ifPresent(make -> {
            boolean tapped = make.value() == Hole.Make.TAPPED;
            if (tapped != record.has("thread")) {
                report(
                        make.tree().at(),
                        make.path(),
                        tapped
                                ? "Found a tapped hole without a thread; write its thread, such as M8."
                                : "Found a thread on a hole that is not tapped; leave it out, or write tapped here.");
            }
        });
    }

    private void feedsByDiameter(HalfRead record) {
        double before = Double.NEGATIVE_INFINITY;
        for (Found row : record.all("feeds")) {
            Found diameter = ((HalfRead) row.value()).one("diameter").orElse(null);
            if (diameter != null) {
                double mm = ((Typed<?>) diameter.value()).inside();
                if (mm <= before) {
                    report(diameter, "more than the diameter before it");
                }
                before = mm;
            }
        }
    }

    private void report(Found found, String accepted) {
        report(found.tree().at(), found.path(), "Found " + found.tree().found() + "; accepted here: " + accepted + ".");
    }

    private void report(Place at, String path, String message) {
        problems.add(at, path, message);
    }
}
