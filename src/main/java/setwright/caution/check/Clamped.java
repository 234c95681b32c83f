package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Side;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.shop.Vise;

/** A set-up in its vise, and where the part sits in it. */
record Clamped(Plan plan, DrawnSetUp setUp, DrawnVise drawn, Vise vise, SetUpStage stage) {
    /** Every set-up whose vise the shop has, in working order. */
    static List<Clamped> all(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> of(plan, setUp).stream())
                .toList();
    }

    private static Optional<Clamped> of(Plan plan, DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> {
                DrawnVise drawn = (DrawnVise) setUp.holding();
                yield plan.rows()
                        .vise(drawn.vise().value())
                        .flatMap(vise -> plan.part()
                                .setUp(setUp.id())
                                .map(stage -> new Clamped(plan, setUp, drawn, vise, stage)));
            }
            case TABLE, DEVICE -> Optional.empty();
        };
    }

    static boolean inVise(Plan plan, String setUp) {
        return all(plan).stream().anyMatch(one -> one.setUp().id().equals(setUp));
    }

    Heights heights() {
        return stage.heights();
    }

    /** What the jaws are expected to press with, N. */
    double grip() {
        return setwright.holding.GripAsked.valueOf(drawn.grip().value().name()).force(vise);
    }

    /** The side of the part that the solid jaw bears on. */
    Side atSolidJaw() {
        return lying().sideFacing(Heading.PLUS_Y);
    }

    /** The side of the part that the moving jaw bears on. */
    Side atMovingJaw() {
        return lying().sideFacing(Heading.MINUS_Y);
    }

    private Attitude lying() {
        return new Attitude(setUp.up().value(), setUp.quarterTurns());
    }

    /** A place that is about the whole set-up. */
    Caution.Place place(String subject, String text) {
        return Caution.Place.ofSetUp(setUp.id(), subject, text);
    }

    String at() {
        return Words.at(setUp.id(), "");
    }

    /** The operations of this set-up. */
    Stream<Operations.In> operations() {
        return Operations.in(plan, setUp);
    }
}
