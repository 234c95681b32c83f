package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.geometry.plane.PlanBox;
import setwright.job.DeviceField;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.Edits;
import setwright.job.HoldingEdits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.TableField;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;

/** The part put elsewhere in its vise. */
record PlaceChanges(Plan plan, String setUp) {
    /** A smaller move is not worth the trouble, mm. */
    private static final double LEAST = 1;

    /** To the middle of the jaws. */
    List<Proposal> toTheMiddle() {
        PackingChanges held = new PackingChanges(plan, setUp);
        if (!held.inVise()) {
            return List.of();
        }
        Drawn<Typed<Length>> now = held.vise().offset();
        Typed<Length> nothing = new Reading(plan.job().plan().units()).length("0");
        return List.of(new Proposal(
                Way.PART_PLACE,
                "Set the part in the middle of the jaws " + Words.now(now) + ".",
                Edits.set(plan.drawnUp(), setUp, ViseField.OFFSET, Plannable.inked(nothing))));
    }

    /** So that the ways of all tools of the set-up lie about the middle of the table, which is what reaches furthest. */
    List<Proposal> pathToTheMiddle() {
        PlanBox path = paths();
        if (path.isEmpty()) {
            return List.of();
        }
        double right = -Math.rint(path.middle().x());
        double back = -Math.rint(path.middle().y());
        DrawnHolding holding = Operations.setUp(plan, setUp).holding();
        List<Proposal> all = new ArrayList<>();
        switch (holding.kind()) {
            case VISE ->
                along(
                        all,
                        right,
                        ((DrawnVise) holding).offset(),
                        value -> Edits.set(plan.drawnUp(), setUp, ViseField.OFFSET, value));
            case TABLE -> {
                DrawnTable now = (DrawnTable) holding;
                along(all, right, now.x(), value -> HoldingEdits.set(plan.drawnUp(), setUp, TableField.X, value));
                across(all, back, now.y(), value -> HoldingEdits.set(plan.drawnUp(), setUp, TableField.Y, value));
            }
            case DEVICE -> {
                DrawnDevice now = (DrawnDevice) holding;
                along(all, right, now.x(), value -> HoldingEdits.set(plan.drawnUp(), setUp, DeviceField.X, value));
                across(all, back, now.y(), value -> HoldingEdits.set(plan.drawnUp(), setUp, DeviceField.Y, value));
            }
        }
        return List.copyOf(all);
    }

    private void along(
            List<Proposal> all, double by, Drawn<Typed<Length>> now, Function<Plannable<Typed<Length>>, Job> edit) {
        if (Math.abs(by) >= LEAST) {
            all.add(moved(by, "right", "left", now, edit));
        }
    }

    private void across(
            List<Proposal> all, double by, Drawn<Typed<Length>> now, Function<Plannable<Typed<Length>>, Job> edit) {
        if (Math.abs(by) >= LEAST) {
            all.add(moved(by, "back", "front", now, edit));
        }
    }

    private Proposal moved(
            double by,
            String one,
            String other,
            Drawn<Typed<Length>> now,
            Function<Plannable<Typed<Length>>, Job> edit) {
        Words words = new Words(plan);
        return new Proposal(
                Way.PART_PLACE,
                "Set the part " + words.length(Math.abs(by)) + " further to the " + (by > 0 ? one : other) + " "
                        + Words.now(now) + ".",
                edit.apply(Plannable.inked(words.typed(now.value().inside() + by))));
    }

    private PlanBox paths() {
        return plan.part().setUp(setUp).stream()
                .flatMap(stage -> stage.operations().stream())
                .map(on -> on.path().box().plan())
                .reduce(PlanBox.EMPTY, PlanBox::and);
    }

    /** Turned about the upright axis by so many quarter turns more. */
    Proposal turned(int quarters, String text) {
        return new Proposal(Way.PART_PLACE, text, with(before -> turned(before, quarters)));
    }

    private static SetUp turned(SetUp before, int quarters) {
        return before.withQuarterTurns(Math.floorMod(before.quarterTurns() + quarters, 4));
    }

    Job with(UnaryOperator<SetUp> change) {
        List<SetUp> all = Edits.written(plan.drawnUp()).stream()
                .map(one -> one.id().equals(setUp) ? change.apply(one) : one)
                .toList();
        return plan.job().withPlan(plan.job().plan().withSetUps(all));
    }
}
