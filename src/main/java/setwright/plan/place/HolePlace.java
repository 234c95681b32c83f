package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.location.Contributor;
import setwright.location.budget.Seating;
import setwright.plan.part.OperationStage;

/** What puts a hole out of its place: datum, loading, slides, the drill, the lean of the head, the index. */
record HolePlace(Loading loading, Hole hole, Making making, OperationStage stage) {
    List<Contributor> contributors() {
        List<Contributor> all = new ArrayList<>();
        all.add(loading.datum().contributor());
        all.add(loading.loading());
        all.addAll(within());
        return all;
    }

    /** What is left between two holes of one loading: datum and loading put both out alike. */
    List<Contributor> within() {
        double depth = stage.workTop() - stage.lowest();
        boolean bored = making.operation().kind() == Operation.Kind.BORE;
        List<Contributor> all =
                new ArrayList<>(loading.hole(bored).found(0).loaded(0).contributors(depth));
        all.add(Seating.lean(depth));
        all.addAll(loading.index(radius()));
        return all;
    }

    private double radius() {
        return hole.place().kind() == Pattern.Kind.BOLT_CIRCLE
                ? ((Pattern.BoltCircle) hole.place()).diameter().inside() / 2
                : 0;
    }
}
