package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.HoldingEdits;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StrapPlace;

/** A set-up whose part is strapped down, with the straps that the shop has. */
record Strapped(Plan plan, DrawnSetUp setUp, SetUpStage stage, List<StrapPlace> straps) {
    /** Every such set-up, in working order; clamps on an upright face are no straps. */
    static List<Strapped> all(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> of(plan, setUp).stream())
                .toList();
    }

    static Optional<Strapped> of(Plan plan, DrawnSetUp setUp) {
        if (onUprightFace(setUp.holding())) {
            return Optional.empty();
        }
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> new Strapped(
                        plan,
                        setUp,
                        stage,
                        StrapPlace.all(HoldingEdits.straps(setUp.holding()), stage.heights(), plan.rows())))
                .filter(strapped -> !strapped.straps().isEmpty());
    }

    private static boolean onUprightFace(DrawnHolding holding) {
        return holding.kind() == DrawnHolding.Kind.DEVICE
                && ((DrawnDevice) holding).on() == DeviceHolding.On.ANGLE_PLATE;
    }

    Heights heights() {
        return stage.heights();
    }

    /** The body of a strap. */
    Optional<Body> body(StrapPlace strap) {
        return stage.fixtures().stream()
                .filter(body -> body.role() == Role.STRAP && body.name().equals(strap.name()))
                .findFirst();
    }

    /** A place that is about one strap. */
    Caution.Place place(StrapPlace strap) {
        return Caution.Place.ofSetUp(setUp.id(), strap.drawn().id(), strap.name());
    }

    String at() {
        return Words.at(setUp.id(), "");
    }

    Stream<Operations.In> operations() {
        return Operations.in(plan, setUp);
    }
}
