package setwright.drawing;

import java.util.Set;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/** The set-up as the machinist sees it, cut through the spindle, with the height ladder at its left. */
public final class FrontView {
    private FrontView() {}

    /** Empty where the set-up could not be laid out. */
    public static Drawing of(Plan plan, Place place, Printing printing) {
        return Scene.of(plan, place, printing)
                .map(scene -> of(scene, Set.of(View.FRONT)))
                .orElse(Drawing.EMPTY);
    }

    static Drawing of(Scene scene, Set<View> beside) {
        return LadderMarks.of(scene).and(UprightView.of(scene, View.FRONT, beside));
    }
}
