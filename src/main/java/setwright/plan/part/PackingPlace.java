package setwright.plan.part;

import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** A piece of packing under the part, in plan on the table. */
public record PackingPlace(String name, PlanBox plan) {
    Body body(Heights heights) {
        return Fixtures.box(
                name,
                Role.PACKING,
                new Point2(plan.xLow(), plan.yLow()),
                new Point2(plan.xHigh(), plan.yHigh()),
                heights.bed(),
                heights.partBottom());
    }
}
