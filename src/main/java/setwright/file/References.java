package setwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.file.json.Problems;
import setwright.file.json.Quoted;
import setwright.file.shape.Closest;
import setwright.file.shape.HalfRead;
import setwright.file.shape.Shape.Found;
import setwright.job.Chamfer;
import setwright.job.DeviceHolding;
import setwright.job.Feature;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.Relation;
import setwright.job.StopAt;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.OtherJaws;
import setwright.shop.Owned;
import setwright.shop.Parallels;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.Stop;
import setwright.shop.Stud;
import setwright.shop.TableClamp;
import setwright.shop.Tailstock;
import setwright.shop.TapTest;
import setwright.shop.Vise;
import setwright.shop.Washer;

/** Every id is there once, and every id that is named is there and names the right kind of thing. */
final class References {
    /** A material that need not be a row: then the most pessimistic group is taken. */
    private static final String UNKNOWN_STEEL = "unknown-steel";

    static final List<Reference> ALL = List.of(
            new Reference(new Component(Operation.class, "features"), Feature.class, "feature", ""),
            new Reference(new Component(Relation.class, "of"), Feature.class, "feature", ""),
            new Reference(new Component(Relation.class, "to"), Feature.class, "feature", ""),
            new Reference(new Component(JobPlan.class, "received"), Feature.class, "feature", ""),
            new Reference(new Component(Chamfer.class, "of"), Feature.class, "feature", Chamfer.OUTLINE),
            new Reference(new Component(Operation.class, "cutter"), Cutter.class, "cutter", ""),
            new Reference(new Component(Operation.class, "holder"), Holder.class, "holder", ""),
            new Reference(new Component(ViseHolding.class, "vise"), Vise.class, "vise", ""),
            new Reference(
                    new Component(ViseHolding.class, "parallels"),
                    Parallels.class,
                    "set of parallels",
                    ViseHolding.NONE),
            new Reference(
                    new Component(ViseHolding.class, "jaws"), OtherJaws.class, "pair of other jaws", ViseHolding.NONE),
            new Reference(new Component(TableHolding.class, "packing"), Owned.class, "packing", ViseHolding.NONE),
            new Reference(new Component(DeviceHolding.class, "device"), Owned.class, "device", ""),
            new Reference(
                    new Component(Strapping.class, "strap"), TableClamp.class, "strap or edge clamp", ViseHolding.NONE),
            new Reference(new Component(DeviceHolding.class, "vise"), Vise.class, "vise", ViseHolding.NONE),
            new Reference(
                    new Component(DeviceHolding.class, "gear"),
                    Owned.class,
                    "tape, glue, chuck, mandrel or board",
                    ViseHolding.NONE),
            new Reference(new Component(DeviceHolding.class, "tail"), Tailstock.class, "tailstock", ViseHolding.NONE),
            new Reference(new Component(Strapping.class, "stud"), Stud.class, "set of studs", ""),
            new Reference(new Component(Strapping.class, "washer"), Washer.class, "washer", ViseHolding.NONE),
            new Reference(new Component(StopAt.class, "stop"), Stop.class, "stop", ViseHolding.NONE),
            new Reference(new Component(MachineAsItStands.class, "machine"), Machine.class, "machine", ""),
            new Reference(new Component(MachineAsItStands.class, "clockedIn"), Owned.class, "device", ""),
            new Reference(new Component(JobPlan.class, "material"), Material.class, "material", UNKNOWN_STEEL),
            new Reference(new Component(TapTest.class, "machine"), Machine.class, "machine", ""),
            new Reference(new Component(TapTest.class, "holder"), Holder.class, "holder", ""),
            new Reference(new Component(TapTest.class, "cutter"), Cutter.class, "cutter", ""),
            new Reference(new Component(CuttingSpeed.class, "material"), Material.class, "material", UNKNOWN_STEEL));

    private final Shop shop;
    private final Problems problems;
    private final Map<String, Known> inJob = new LinkedHashMap<>();
    private final Map<String, Known> rows = new LinkedHashMap<>();
    private final Map<String, Known> remarks = new LinkedHashMap<>();
    private final List<Asked> asked = new ArrayList<>();

    References(Shop shop, Problems problems) {
        this.shop = shop;
        this.problems = problems;
    }

    /**
     * A component that names the id of something.
     *
     * @param besides a word that may stand in place of an id; empty where there is none
     */
    record Reference(Component component, Class<?> target, String words, String besides) {
        boolean accepts(Class<?> type) {
            boolean kindUnknown = type.isInterface() && type.isAssignableFrom(target);
            return kindUnknown || target.isAssignableFrom(type);
        }
    }

    private record Known(Class<?> type, Found id) {}

    private record Asked(Reference reference, Found id) {}

    void pass(HalfRead record) {
        record.one("id").ifPresent(id -> define(record.type(), id));
        for (Reference reference : ALL) {
            if (reference.component().in(record)) {
                record.all(reference.component().key()).forEach(id -> asked.add(new Asked(reference, id)));
            }
        }
    }

    private void define(Class<?> type, Found id) {
        Known first = family(type).putIfAbsent((String) id.value(), new Known(type, id));
        if (first != null) {
            problems.add(
                    id.tree().at(),
                    id.path(),
                    "The id " + Quoted.of((String) id.value()) + " is taken by "
                            + first.id().path() + " at "
                            + first.id().tree().at().words() + "; give one of the two another id.");
        }
    }

    private Map<String, Known> family(Class<?> type) {
        if (ShopRow.class.isAssignableFrom(type)) {
            return rows;
        }
        return type == JobRecord.Remark.class ? remarks : inJob;
    }

    /** To be called once, when every record has passed. */
    void finish() {
        for (Asked one : asked) {
            String id = (String) one.id().value();
            if (!id.equals(one.reference().besides()) || id.isEmpty()) {
                resolve(one.reference(), id, one.id());
            }
        }
    }

    private void resolve(Reference reference, String id, Found at) {
        Optional<Class<?>> type = type(reference, id);
        if (type.isEmpty()) {
            problems.add(at.tree().at(), at.path(), missing(reference, id));
        } else if (!reference.accepts(type.get())) {
            problems.add(
                    at.tree().at(),
                    at.path(),
                    Quoted.of(id) + " is no " + reference.words() + " but the id of another kind of thing"
                            + close(reference, id) + ".");
        }
    }

    private Optional<Class<?>> type(Reference reference, String id) {
        Known known = family(reference.target()).get(id);
        if (known != null) {
            return Optional.of(known.type());
        }
        return reference.target() == Feature.class
                ? Optional.empty()
                : shop.row(id).map(ShopRow::getClass);
    }

    private String missing(Reference reference, String id) {
        String where = reference.target() == Feature.class ? "among the features of the job" : "in the job or the shop";
        return "There is no " + reference.words() + " " + Quoted.of(id) + " " + where + close(reference, id) + ".";
    }

    private String close(Reference reference, String id) {
        List<String> ids = new ArrayList<>();
        family(reference.target()).forEach((key, known) -> {
            if (reference.accepts(known.type())) {
                ids.add(key);
            }
        });
        if (reference.target() != Feature.class) {
            shop.rows().stream()
                    .filter(row -> reference.accepts(row.getClass()))
                    .forEach(row -> ids.add(row.id()));
        }
        return Closest.to(id, ids)
                .map(close -> "; " + Quoted.of(close) + " is close")
                .orElse(ids.isEmpty() || ids.size() > 8 ? "" : "; there are " + String.join(", ", ids));
    }
}
