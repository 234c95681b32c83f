package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Side;
import setwright.job.DrawnSetUp;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.plan.Plan;

/** How the faces of the part are when a set-up begins. */
record FaceStates(Plan plan, int setUp) {
    private static final List<FaceState> ROUGH =
            List.of(FaceState.SAWN, FaceState.HOT_ROLLED, FaceState.FLAME_CUT, FaceState.CAST);

    static FaceStates before(Plan plan, DrawnSetUp setUp) {
        return new FaceStates(plan, plan.drawnUp().setUps().indexOf(setUp));
    }

    /** Machined where an earlier set-up faced it, else as the blank comes. */
    FaceState of(Side side) {
        return cut(side).isPresent() ? FaceState.MACHINED : asItComes(side);
    }

    FaceState asItComes(Side side) {
        return plan.job().plan().blank().faces().getOrDefault(side, FaceState.SAWN);
    }

    boolean rough(Side side) {
        return ROUGH.contains(of(side));
    }

    /** The face that an earlier set-up cut on a side. */
    Optional<Face> cut(Side side) {
        return faces(plan, side)
                .filter(face ->
                        plan.drawnUp().setUps().subList(0, setUp).stream().anyMatch(before -> cuts(before, face)))
                .findFirst();
    }

    static Stream<Face> faces(Plan plan, Side side) {
        return plan.job().plan().features().stream()
                .filter(feature -> feature.kind() == Feature.Kind.FACE && feature.side() == side)
                .map(Face.class::cast);
    }

    static boolean cuts(DrawnSetUp setUp, Face face) {
        return setUp.operations().stream()
                .anyMatch(operation -> operation.kind() == Operation.Kind.FACE
                        && operation.features().contains(face.id()));
    }
}
