package setwright.caution;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Shop;

/** A job of the small shop that a test changes field by field, and what is found in it. */
public record Bench(Job job, Shop shop) {
    public static Bench of(Job job) {
        return new Bench(job, SmallShop.shop());
    }

    public Bench in(Shop other) {
        return new Bench(job, other);
    }

    public Bench with(UnaryOperator<Job> change) {
        return new Bench(change.apply(job), shop);
    }

    public <T> Bench ink(String operation, OperationField<T> field, T value) {
        return with(before -> Edits.set(plan().drawnUp(), operation, field, Plannable.inked(value)));
    }

    public <T> Bench ink(ViseField<T> field, T value) {
        return with(before -> Edits.set(plan().drawnUp(), "s1", field, Plannable.inked(value)));
    }

    public Bench mm(String operation, OperationField<Typed<Length>> field, double mm) {
        return ink(operation, field, SmallShop.length(mm + " mm"));
    }

    public Bench mm(ViseField<Typed<Length>> field, double mm) {
        return ink(field, SmallShop.length(mm + " mm"));
    }

    public Plan plan() {
        return Planner.plan(job, shop);
    }

    public Findings findings() {
        return Judge.judge(plan());
    }

    /** What the check of that slug said: everything but notes. */
    List<Caution> found(String slug) {
        return findings().cautions().stream()
                .filter(caution -> caution.slug().equals(slug) && caution.severity() != Severity.NOTE)
                .toList();
    }

    Optional<Caution> note(String slug) {
        return findings().cautions().stream()
                .filter(caution -> caution.slug().equals(slug) && caution.severity() == Severity.NOTE)
                .findFirst();
    }

    List<Remedy> remedies(Caution caution) {
        Plan plan = plan();
        return Remedies.tried(plan, Judge.judge(plan), caution, shop, () -> false);
    }
}
