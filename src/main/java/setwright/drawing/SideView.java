package setwright.drawing;

import java.util.Set;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/** The set-up from the left end of the table, cut through the spindle: both jaws, the parallels, the part between. */
public final class SideView {
    private SideView() {}

    /** Empty where the set-up could not be laid out. */
    public static Drawing of(Plan plan, Place place, Printing printing) {
        return Scene.of(plan, place, printing)
                .map(scene -> of(scene, Set.of(View.SIDE)))
                .orElse(Drawing.EMPTY);
    }

    static Drawing of(Scene scene, Set<View> beside) {
        return UprightView.of(scene, View.SIDE, beside);
    }
}
