package setwright.window.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Title;
import setwright.job.ZeroFinding;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;
import setwright.shop.Cutter;
import setwright.shop.Shop;
import setwright.window.state.QuickField;
import setwright.window.state.QuickFields;

/** Makes a small job of the nine fields: one block of a usual size, one feature, one operation in ink. */
final class QuickJob {
    static final String SET_UP = "s1";
    static final String OPERATION = "o1";

    private final QuickFields fields;
    private final Shop shop;
    private final UnitSystem units;
    private final Map<QuickField, String> complaints = new EnumMap<>(QuickField.class);

    private QuickJob(QuickFields fields, Shop shop, UnitSystem units) {
        this.fields = fields;
        this.shop = shop;
        this.units = units;
    }

    /**
     * The job, or why there is none.
     *
     * @param complaints by the field whose text cannot be read
     */
    record Made(Optional<Job> job, Map<QuickField, String> complaints) {}

    /** @param filled with something in every field that the pencil does not fill */
    static Made of(QuickFields filled, Shop shop, UnitSystem units) {
        QuickJob quick = new QuickJob(filled, shop, units);
        Optional<Job> job = quick.job();
        return new Made(quick.complaints.isEmpty() ? job : Optional.empty(), Map.copyOf(quick.complaints));
    }

    private Optional<Job> job() {
        Optional<QuickCut> cut = read(QuickField.CUT, text -> QuickCut.read(new Reading(units), text));
        Optional<Typed<Length>> height = read(QuickField.HEIGHT, this::length);
        Optional<Typed<Length>> stickOut = fields.text(QuickField.STICK_OUT).isEmpty()
                ? Optional.empty()
                : read(QuickField.STICK_OUT, this::length);
        Optional<Cutter> cutter = shop.row(fields.text(QuickField.CUTTER), Cutter.class);
        Optional<QuickKind> kind = QuickKind.named(fields.text(QuickField.OPERATION));
        if (cut.isEmpty() || height.isEmpty() || cutter.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        QuickPart part = new QuickPart(kind.get(), cutter.get(), cut.get(), units);
        QuickGrip grip = QuickGrip.of(fields.text(QuickField.HELD), height.get(), shop, units);
        Operation operation = part.depthAndWidth(operation(kind.get(), part.feature(grip.blank()), stickOut));
        return Optional.of(job(grip, part.feature(grip.blank()), operation));
    }

    private Operation operation(QuickKind kind, Feature feature, Optional<Typed<Length>> stickOut) {
        Operation plain = Operation.pencilled(OPERATION, kind.kind(), List.of(feature.id()));
        String holder = fields.text(QuickField.HOLDER);
        Operation with = OperationField.CUTTER.write(plain, Plannable.inked(fields.text(QuickField.CUTTER)));
        Operation held = holder.isEmpty() ? with : OperationField.HOLDER.write(with, Plannable.inked(holder));
        return stickOut.map(out -> OperationField.STICK_OUT.write(held, Plannable.inked(out)))
                .orElse(held);
    }

    private Job job(QuickGrip grip, Feature feature, Operation operation) {
        Holding holding = grip.holding();
        SetUp setUp = new SetUp(
                SET_UP, "Top side up", Plannable.inked(Side.TOP), 0, holding, ZeroFinding.EDGES, List.of(operation));
        JobPlan plan = new JobPlan(
                new Title("Quick check", "", ""),
                units,
                1,
                fields.text(QuickField.MATERIAL),
                grip.blank(),
                new MachineAsItStands(fields.text(QuickField.MACHINE), grip.clockedIn(), null),
                List.of(feature),
                List.of(setUp),
                List.of());
        return new Job(plan, JobRecord.EMPTY);
    }

    private Typed<Length> length(String text) {
        return Sort.SIZE.read().apply(new Reading(units), text);
    }

    private <T> Optional<T> read(QuickField field, Function<String, T> reading) {
        try {
            return Optional.of(reading.apply(fields.text(field)));
        } catch (Unreadable why) {
            complaints.put(field, String.valueOf(why.getMessage()));
            return Optional.empty();
        }
    }

    /** A block of so many millimetres, written in the units of the job. */
    static Block block(double height, UnitSystem units) {
        boolean metric = units == UnitSystem.METRIC;
        return new Block(
                size(metric ? "100 mm" : "4 in", units),
                size(metric ? "60 mm" : "2-1/2 in", units),
                Size.of(written(height, units)),
                Map.of());
    }

    static Typed<Length> written(double mm, UnitSystem units) {
        return new Reading(units)
                .length(new setwright.quantity.Printing(units).of(setwright.quantity.Measure.LENGTH, mm));
    }

    private static Size size(String text, UnitSystem units) {
        return Size.of(new Reading(units).length(text));
    }
}
