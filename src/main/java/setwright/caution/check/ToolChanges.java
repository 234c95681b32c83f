package setwright.caution.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.Plan;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.choose.HolderRank;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;

/** Other ways to hold and set the cutter of an operation, of what the shop owns. */
record ToolChanges(Plan plan, DrawnOperation operation) {
    /** Least of a shank that has to stay gripped, in diameters of the shank (common practice). */
    private static final double LEAST_GRIP = 1.5;

    private static final double INCH = 25.4;

    /** Cutters that differ by less are of one size, mm. */
    private static final double LEAST_STEP = 0.1;

    static ToolChanges of(Plan plan, Caution caution) {
        return new ToolChanges(plan, Operations.operation(plan, caution.setUp(), caution.operation()));
    }

    /** More stick-out by at least what is missing, where enough of the shank stays gripped. */
    List<Proposal> longer(double missing) {
        double wanted = settable(operation.stickOut().value().inside() + missing);
        return plan.rows().cutter(operation.cutter().value()).stream()
                .filter(cutter -> wanted <= longest(cutter))
                .map(cutter -> stickOut(new Words(plan).typed(wanted)))
                .toList();
    }

    private static double longest(Cutter cutter) {
        return cutter.overallLength().inside() - LEAST_GRIP * cutter.shank().inside();
    }

    /** Rounded up to what one sets by a rule: a millimetre, a sixteenth of an inch. */
    private double settable(double mm) {
        double step = plan.job().plan().units() == UnitSystem.METRIC ? 1 : INCH / 16;
        return Math.ceil(mm / step - 1e-9) * step;
    }

    private Proposal stickOut(Typed<Length> out) {
        Job changed = Edits.set(plan.drawnUp(), operation.id(), OperationField.STICK_OUT, Plannable.inked(out));
        String text = "Set the tool out to " + out.text() + " " + Words.now(operation.stickOut()) + ".";
        return new Proposal(Way.STICK_OUT, text, changed);
    }

    /** The stick-out as short as the holder and the flutes allow, where somebody set it otherwise. */
    List<Proposal> asShortAsItHolds() {
        if (operation.stickOut().pencilled()) {
            return List.of();
        }
        Job changed = Edits.pencil(plan.drawnUp(), operation.id(), OperationField.STICK_OUT);
        String text = "Set the tool in as far as it goes " + Words.now(operation.stickOut()) + ".";
        return List.of(new Proposal(Way.STICK_OUT, text, changed));
    }

    /** The knee height that suits all tools, where somebody set it otherwise. */
    List<Proposal> kneeToPencil() {
        if (operation.kneeHeight().pencilled()) {
            return List.of();
        }
        Job changed = Edits.pencil(plan.drawnUp(), operation.id(), OperationField.KNEE_HEIGHT);
        String text = "Give the knee height back to the pencil " + Words.now(operation.kneeHeight()) + ".";
        return List.of(new Proposal(Way.KNEE, text, changed));
    }

    /** A drill that stops half way, the knee coming up, and goes on. */
    List<Proposal> inBites() {
        if (operation.kind() != Operation.Kind.DRILL || operation.method().value() == Operation.Method.QUILL_IN_BITES) {
            return List.of();
        }
        Job changed = Edits.set(
                plan.drawnUp(),
                operation.id(),
                OperationField.METHOD,
                Plannable.inked(Operation.Method.QUILL_IN_BITES));
        return List.of(new Proposal(
                Way.METHOD, "Drill as far as the quill goes, then quill back, knee up, lock, and on.", changed));
    }

    /** Every other holder that may take the cutter, in the order of the ranking; the stick-out goes to the pencil. */
    List<Proposal> otherHolders() {
        return choice().stream()
                .flatMap(choice -> choice.ranked().stream())
                .filter(HolderRank.Candidate::kept)
                .filter(one -> !one.holder().id().equals(operation.holder().value()))
                .map(this::hold)
                .toList();
    }

    /** Other cutters of the same form and size that are shorter, a stub drill in place of a jobber one. */
    List<Proposal> shorterCutters() {
        return plan.rows().cutter(operation.cutter().value()).stream()
                .flatMap(now ->
                        otherCutters(other -> other.overallLength().inside()
                                        < now.overallLength().inside())
                                .stream())
                .toList();
    }

    /** Every other owned cutter of the same form and size, in the order of the shop. */
    List<Proposal> otherCutters() {
        return otherCutters(other -> true);
    }

    /** Other cutters of the same form and size that are wanted; holder and stick-out go to the pencil. */
    List<Proposal> otherCutters(Predicate<Cutter> wanted) {
        return plan.rows().cutter(operation.cutter().value()).stream()
                .flatMap(now -> plan.rows().all(Cutter.class).stream()
                        .filter(one -> one.form() == now.form() && one.kept().owned() != 0)
                        .filter(one -> !one.id().equals(now.id()))
                        .filter(one -> one.diameter().inside() == now.diameter().inside())
                        .filter(wanted))
                .map(this::cutWith)
                .toList();
    }

    /** Owned drills of a size between these, nearest to one first; holder and stick-out go to the pencil. */
    List<Proposal> drills(double least, double most, double nearest) {
        return sized(Cutter.Form.DRILL, least, most, nearest).toList();
    }

    private Stream<Proposal> sized(Cutter.Form form, double least, double most, double nearest) {
        return plan.rows().all(Cutter.class).stream()
                .filter(one -> one.form() == form && one.kept().owned() != 0)
                .filter(one ->
                        one.diameter().inside() >= least && one.diameter().inside() <= most)
                .sorted(Comparator.comparingDouble(
                                (Cutter one) -> Math.abs(one.diameter().inside() - nearest))
                        .thenComparing(Cutter::id))
                .map(this::cutWith);
    }

    /** Owned cutters of the same form that are thicker, up to half as much again, thinnest first. */
    List<Proposal> stouter() {
        return plan.rows().cutter(operation.cutter().value()).stream()
                .flatMap(now -> sized(
                        now.form(),
                        now.diameter().inside() + LEAST_STEP,
                        1.5 * now.diameter().inside(),
                        now.diameter().inside()))
                .toList();
    }

    /** Owned end mills of a size between these, nearest to one first. */
    List<Proposal> endMills(double least, double most, double nearest) {
        return sized(Cutter.Form.END_MILL, least, most, nearest).toList();
    }

    /** What the pencil would take, where somebody chose otherwise. */
    List<Proposal> cutterToPencil() {
        if (operation.cutter().pencilled()) {
            return List.of();
        }
        Job changed = Edits.pencil(plan.drawnUp(), operation.id(), OperationField.CUTTER);
        return List.of(new Proposal(
                Way.CUTTER,
                "Give the choice of the cutter back to the pencil "
                        + Words.now(operation.cutter(), new Words(plan)::row) + ".",
                changed.withPlan(toPencil(changed.plan(), OperationField.HOLDER, OperationField.STICK_OUT))));
    }

    /** Other owned cutters of the same form that are wanted, whatever their size, in the order of the shop. */
    List<Proposal> otherSizes(Predicate<Cutter> wanted) {
        return plan.rows().cutter(operation.cutter().value()).stream()
                .flatMap(now -> plan.rows().all(Cutter.class).stream()
                        .filter(one -> one.form() == now.form() && one.kept().owned() != 0)
                        .filter(wanted))
                .map(this::cutWith)
                .toList();
    }

    private Proposal cutWith(Cutter cutter) {
        Job changed = Edits.set(plan.drawnUp(), operation.id(), OperationField.CUTTER, Plannable.inked(cutter.id()));
        return new Proposal(
                Way.CUTTER,
                "Take the " + cutter.name() + ".",
                changed.withPlan(toPencil(changed.plan(), OperationField.HOLDER, OperationField.STICK_OUT)));
    }

    private Optional<ChoicePlan.OperationChoice> choice() {
        return plan.choose().operations().stream()
                .filter(one -> one.operation().equals(operation.id()))
                .findFirst();
    }

    private Proposal hold(HolderRank.Candidate candidate) {
        Job held = Edits.set(
                plan.drawnUp(),
                operation.id(),
                OperationField.HOLDER,
                Plannable.inked(candidate.holder().id()));
        boolean wasSet = !operation.stickOut().pencilled();
        String setIn = wasSet ? ", set in as far as it goes " + Words.now(operation.stickOut()) : "";
        return new Proposal(
                Way.HOLDER,
                "Hold it in the " + candidate.holder().name() + setIn + ".",
                held.withPlan(toPencil(held.plan(), OperationField.STICK_OUT)));
    }

    private JobPlan toPencil(JobPlan job, OperationField<?>... fields) {
        return job.withSetUps(job.setUps().stream()
                .map(setUp -> setUp.withOperations(setUp.operations().stream()
                        .map(one -> one.id().equals(operation.id()) ? pencilled(one, fields) : one)
                        .toList()))
                .toList());
    }

    private static Operation pencilled(Operation before, OperationField<?>... fields) {
        Operation changed = before;
        for (OperationField<?> field : fields) {
            changed = field.write(changed, Plannable.pencilled());
        }
        return changed;
    }
}
