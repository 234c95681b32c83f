package setwright.drawing;

import java.util.Set;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/** The set-up from above: table, device, part with its holes, and the way of the cutter. */
public final class TopView {
    private TopView() {}

    /** Empty where the set-up could not be laid out. */
    public static Drawing of(Plan plan, Place place, Printing printing) {
        return Scene.of(plan, place, printing)
                .map(scene -> of(scene, Set.of(View.TOP)))
                .orElse(Drawing.EMPTY);
    }

    static Drawing of(Scene scene, Set<View> beside) {
        return new PlanMarks(scene).drawn(beside);
    }
}
