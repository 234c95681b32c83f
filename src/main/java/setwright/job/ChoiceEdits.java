package setwright.job;

import java.util.ArrayList;
import java.util.List;

/** Taking one of several ways to hold the work or the cutter, each {@code Job -> Job}. */
public final class ChoiceEdits {
    private ChoiceEdits() {}

    /** The set-up is held so from now on. */
    public static Job held(DrawnUp drawnUp, String setUp, Holding holding) {
        return Edits.withHolding(drawnUp, setUp, before -> holding);
    }

    /** The operation's cutter goes into this holder; how far it stands out is left to the pencil. */
    public static Job holder(DrawnUp drawnUp, String operation, String holder) {
        Job held = Edits.set(drawnUp, operation, OperationField.HOLDER, Plannable.inked(holder));
        return Edits.pencil(new DrawnUp(held, drawnUp.setUps()), operation, OperationField.STICK_OUT);
    }

    /** Says why the holding of a set-up or the holder of an operation is not the first of the ranking; blank takes it back. */
    public static Job because(Job job, String of, String reason) {
        List<Chosen> all = new ArrayList<>(job.plan().chosen());
        all.removeIf(one -> one.of().equals(of));
        if (!reason.isBlank()) {
            all.add(new Chosen(of, reason.strip()));
        }
        return job.withPlan(job.plan().withChosen(all));
    }
}
