package setwright.caution.check;

import java.util.Comparator;
import java.util.List;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.Edits;
import setwright.job.HoldingEdits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.TableField;
import setwright.job.TableHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.shop.Parallels;

/** Other packing for a set-up, of what the shop owns. */
record PackingChanges(Plan plan, String setUp) {

    /** Thinner sets, thickest of them first, each in its height nearest to the present one. */
    List<Proposal> thinner() {
        if (!inVise()) {
            return List.of();
        }
        double now = plan.rows()
                .parallels(vise().parallels().value())
                .map(set -> set.thickness().inside())
                .orElse(Double.POSITIVE_INFINITY);
        double height = vise().parallelHeight().value().inside();
        return plan.rows().all(Parallels.class).stream()
                .filter(set -> set.kept().owned() != 0)
                .filter(set -> set.thickness().inside() < now)
                .sorted(Comparator.comparingDouble(
                                (Parallels set) -> -set.thickness().inside())
                        .thenComparing(Parallels::id))
                .flatMap(
                        set -> set.heights().stream()
                                .min(nearestTo(height))
                                .map(one -> take(Way.PACKING_THICKNESS, set, one))
                                .stream())
                .toList();
    }

    /** Every other set that is owned, in its height nearest to the present one. */
    List<Proposal> otherSets() {
        if (!inVise()) {
            return List.of();
        }
        double height = vise().parallelHeight().value().inside();
        return plan.rows().all(Parallels.class).stream()
                .filter(set -> set.kept().owned() != 0)
                .filter(set -> !set.id().equals(vise().parallels().value()))
                .flatMap(
                        set -> set.heights().stream()
                                .min(nearestTo(height))
                                .map(one -> take(Way.PACKING_THICKNESS, set, one))
                                .stream())
                .toList();
    }

    /** Higher than now in the same set, lowest first. */
    List<Proposal> higher() {
        return otherHeights(true);
    }

    /** Lower than now in the same set, highest first. */
    List<Proposal> lower() {
        return otherHeights(false);
    }

    /** Packing under a part that lies straight on the table. */
    List<Proposal> onTable() {
        DrawnHolding holding = Operations.setUp(plan, setUp).holding();
        if (holding.kind() != DrawnHolding.Kind.TABLE
                || ((DrawnTable) holding).seat().value() != TableHolding.Seat.TABLE) {
            return List.of();
        }
        return List.of(new Proposal(
                Way.PACKING_HEIGHT,
                "Set the part on packing, a piece under every pad.",
                HoldingEdits.set(plan.drawnUp(), setUp, TableField.SEAT, Plannable.inked(TableHolding.Seat.PACKING))));
    }

    private List<Proposal> otherHeights(boolean up) {
        if (!inVise()) {
            return List.of();
        }
        double now = vise().parallelHeight().value().inside();
        return plan.rows().parallels(vise().parallels().value()).stream()
                .flatMap(set -> set.heights().stream()
                        .filter(one -> up ? one.inside() > now : one.inside() < now)
                        .sorted(nearestTo(now))
                        .map(one -> take(Way.PACKING_HEIGHT, set, one)))
                .toList();
    }

    private static Comparator<Typed<Length>> nearestTo(double height) {
        return Comparator.comparingDouble(one -> Math.abs(one.inside() - height));
    }

    /** The parallels pushed against the jaws. */
    List<Proposal> againstJaws() {
        if (!inVise() || !vise().onParallels() || vise().parallelInset().value().inside() <= 0) {
            return List.of();
        }
        Typed<Length> nothing = new Reading(plan.job().plan().units()).length("0");
        Job changed = Edits.set(plan.drawnUp(), setUp, ViseField.PARALLEL_INSET, Plannable.inked(nothing));
        String text = "Push the parallels against the jaws " + Words.now(vise().parallelInset()) + ".";
        return List.of(new Proposal(Way.PACKING_PLACE, text, changed));
    }

    /** The part back to the middle of the jaws, where somebody set it off it. */
    List<Proposal> toTheMiddle() {
        if (!inVise() || vise().offset().pencilled()) {
            return List.of();
        }
        return List.of(new Proposal(
                Way.PART_PLACE,
                "Set the part to the middle of the jaws " + Words.now(vise().offset()) + ".",
                Edits.pencil(plan.drawnUp(), setUp, ViseField.OFFSET)));
    }

    private Proposal take(Way way, Parallels set, Typed<Length> height) {
        Job changed = Edits.set(plan.drawnUp(), setUp, ViseField.PARALLELS, Plannable.inked(set.id()));
        Job both = changed.withPlan(changed.plan()
                .withSetUps(changed.plan().setUps().stream()
                        .map(one -> one.id().equals(setUp) ? high(one, height) : one)
                        .toList()));
        String text =
                "Take the " + set.name() + ", " + height.text() + " high " + Words.now(vise().parallelHeight()) + ".";
        return new Proposal(way, text, both);
    }

    private static SetUp high(SetUp before, Typed<Length> height) {
        ViseHolding holding = switch (before.holding().kind()) {
            case VISE -> (ViseHolding) before.holding();
            case UNDECIDED -> ViseHolding.pencilled();
            case TABLE, DEVICE -> throw new IllegalArgumentException("Set-up " + before.id() + " has no vise.");
        };
        return before.withHolding(ViseField.PARALLEL_HEIGHT.write(holding, Plannable.inked(height)));
    }

    /** Whether there is packing to change at all. */
    boolean inVise() {
        return Operations.setUp(plan, setUp).holding().kind() == DrawnHolding.Kind.VISE;
    }

    DrawnVise vise() {
        var holding = Operations.setUp(plan, setUp).holding();
        return switch (holding.kind()) {
            case VISE -> (DrawnVise) holding;
            case TABLE, DEVICE -> throw new IllegalArgumentException("Set-up " + setUp + " has no vise.");
        };
    }
}
