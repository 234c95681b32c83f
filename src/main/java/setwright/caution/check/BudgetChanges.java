package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.SetUp;
import setwright.job.ZeroFinding;
import setwright.plan.Plan;
import setwright.plan.place.Aspect;
import setwright.plan.place.FeatureBudget;
import setwright.shop.Axis;
import setwright.shop.Machine;

/** What might bring an error budget within its tolerance. */
record BudgetChanges(Plan plan, FeatureBudget budget) {
    List<Proposal> all() {
        boolean size = budget.aspect() != Aspect.PLACE && !budget.aspect().relates();
        return size
                ? Stream.concat(measured().stream(), machines()).toList()
                : Stream.concat(datums(), machines()).toList();
    }

    /** Measure before the last cut and correct. */
    private List<Proposal> measured() {
        Job job = plan.job();
        List<Feature> changed = new ArrayList<>();
        for (Feature feature : job.plan().features()) {
            changed.add(feature.id().equals(budget.feature()) ? feature.got(GotBy.MEASURED) : feature);
        }
        return List.of(new Proposal(
                Way.METHOD,
                "Measure " + budget.feature() + " before the last cut and take that by the gauge.",
                job.withPlan(job.plan().withFeatures(changed))));
    }

    /** Another machine that is owned and has readouts on both axes. */
    private Stream<Proposal> machines() {
        Job job = plan.job();
        return plan.rows().all(Machine.class).stream()
                .filter(machine -> machine.kept().owned() != 0)
                .filter(machine -> !machine.id().equals(plan.rows().machine().id()))
                .filter(machine ->
                        machine.x().read() == Axis.ReadBy.READOUT && machine.y().read() == Axis.ReadBy.READOUT)
                .map(machine -> new Proposal(
                        Way.DEVICE,
                        "Take the job to the " + machine.name() + ", which has readouts.",
                        job.withPlan(job.plan().withMachine(new MachineAsItStands(machine.id(), List.of(), null)))));
    }

    /** The same set-up with its zero found another way. */
    private Stream<Proposal> datums() {
        return plan.drawnUp().setUp(budget.setUp()).stream()
                .flatMap(setUp -> Stream.of(ZeroFinding.BORE_SWEPT, ZeroFinding.BETWEEN_EDGES, ZeroFinding.EDGES)
                        .filter(way -> serves(setUp, way))
                        .map(way -> found(setUp, way)));
    }

    private boolean serves(DrawnSetUp setUp, ZeroFinding way) {
        return switch (way) {
            case BORE_SWEPT -> setUp.datum() != ZeroFinding.BORE_SWEPT && boredBefore(setUp);
            case BETWEEN_EDGES -> setUp.datum() == ZeroFinding.SCRIBED_LINES || setUp.datum() == ZeroFinding.EDGES;
            default -> setUp.datum() == ZeroFinding.SCRIBED_LINES;
        };
    }

    /** Whether a set-up before this one leaves a hole true enough to sweep. */
    private boolean boredBefore(DrawnSetUp setUp) {
        return plan.drawnUp().setUps().stream()
                .takeWhile(earlier -> !earlier.id().equals(setUp.id()))
                .flatMap(earlier -> earlier.operations().stream())
                .anyMatch(operation ->
                        operation.kind() == Operation.Kind.BORE || operation.kind() == Operation.Kind.REAM);
    }

    private Proposal found(DrawnSetUp setUp, ZeroFinding way) {
        Job job = plan.job();
        List<SetUp> changed = Edits.written(plan.drawnUp()).stream()
                .map(one -> one.id().equals(setUp.id()) ? one.withDatum(way) : one)
                .toList();
        String words = switch (way) {
            case BORE_SWEPT -> "by sweeping the bore that is there already";
            case EDGES -> "by its edges";
            default -> "as the middle between its edges";
        };
        return new Proposal(
                Way.PART_PLACE,
                "Take the zero of set-up " + setUp.id() + " " + words + ".",
                job.withPlan(job.plan().withSetUps(changed)));
    }
}
