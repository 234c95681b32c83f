package setwright.window.model;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import setwright.job.Block;
import setwright.job.BlockSize;
import setwright.job.JobPlan;
import setwright.job.MachineAsItStands;
import setwright.job.Standing;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unreadable;
import setwright.shop.ShopRow;
import setwright.window.model.CardPlaces.Change;

/** A value of the job as a whole: always ink. */
record PartPlace(
        String key,
        String label,
        Function<JobPlan, String> read,
        BiFunction<Planned, String, JobPlan> write,
        Function<Planned, List<Choice>> choices)
        implements Place {
    private static final int MOST_PARTS = 1_000_000;

    static final PartPlace NUMBER_OFF = new PartPlace(
            "numberOff",
            "Number off",
            plan -> Integer.toString(plan.numberOff()),
            (planned, text) -> planned.job().plan().withNumberOff(count(text)),
            planned -> List.of());

    static PartPlace size(BlockSize size) {
        return new PartPlace(
                Words.of(size),
                "Blank " + Words.of(size),
                plan -> size.of(block(plan)).nominal().text(),
                (planned, text) -> sized(planned, size, text),
                planned -> List.of());
    }

    static <R extends ShopRow> PartPlace material(Class<R> kind) {
        return new PartPlace(
                "material",
                "Material",
                JobPlan::material,
                (planned, text) -> planned.job().plan().withMaterial(text),
                planned -> rows(planned, kind));
    }

    static <R extends ShopRow> PartPlace machine(Class<R> kind) {
        return new PartPlace(
                "machine",
                "Machine",
                plan -> plan.machine().machine(),
                PartPlace::onMachine,
                planned -> rows(planned, kind));
    }

    @Override
    public Field show(Planned planned, String line) {
        return new Field(key, label, read.apply(planned.job().plan()), Standing.INKED, "", choices.apply(planned));
    }

    @Override
    public Change type(Planned planned, String line, String text) {
        JobPlan changed = write.apply(planned, text);
        String said = choices.apply(planned).stream()
                .filter(choice -> choice.value().equals(text))
                .map(Choice::text)
                .findFirst()
                .orElse(read.apply(changed));
        return new Change(label + " to " + said, planned.job().withPlan(changed));
    }

    @Override
    public Optional<Change> ink(Planned planned, String line) {
        return Optional.empty();
    }

    @Override
    public Optional<Change> pencil(Planned planned, String line) {
        return Optional.empty();
    }

    static Block block(JobPlan plan) {
        return plan.blank().envelope();
    }

    private static JobPlan sized(Planned planned, BlockSize size, String text) {
        JobPlan plan = planned.job().plan();
        Typed<Length> nominal = Sort.SIZE.read().apply(planned.reading(), text);
        return plan.withBlank(size.with(block(plan), nominal, plan.units()));
    }

    private static JobPlan onMachine(Planned planned, String id) {
        JobPlan plan = planned.job().plan();
        MachineAsItStands before = plan.machine();
        return before.machine().equals(id) ? plan : plan.withMachine(new MachineAsItStands(id, List.of(), null));
    }

    static int count(String text) {
        try {
            int count = Integer.parseInt(text.strip());
            if (count >= 1 && count <= MOST_PARTS) {
                return count;
            }
        } catch (NumberFormatException letters) {
            // Said below, like a number out of range.
        }
        throw new Unreadable("takes a whole number from 1 to " + MOST_PARTS);
    }

    private static <R extends ShopRow> List<Choice> rows(Planned planned, Class<R> kind) {
        return planned.plan().rows().all(kind).stream()
                .map(row -> new Choice(row.id(), row.name()))
                .toList();
    }
}
