package setwright.review;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Figure;
import setwright.caution.Margin;
import setwright.geometry.Nearest;
import setwright.geometry.Role;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/** The clearances of one operation that no check of its own looks at yet, against what is asked (common practice). */
final class Clearances {
    /** Cutter and shank to jaw, packing, bed or table, mm. */
    private static final double CUTTER = 0.5;

    /** Holder, nose or quill to the part that it works on, mm. */
    private static final double HOLDER_TO_PART = 1;

    private static final List<Role> CUTTING = List.of(Role.CUTTER, Role.SHANK);

    private Clearances() {}

    /** The nearest pair of each kind. */
    static List<Margin> of(String setUp, OperationRoom room) {
        List<Margin> found = new ArrayList<>();
        room.touches().stream()
                .filter(near -> cutting(near) && !ofThePart(near) && near.body().role() != Role.PARALLEL)
                .findFirst()
                .ifPresent(near -> found.add(margin(setUp, room, near, CUTTER)));
        room.touches().stream()
                .filter(near -> !cutting(near) && ofThePart(near))
                .findFirst()
                .ifPresent(near -> found.add(margin(setUp, room, near, HOLDER_TO_PART)));
        return found;
    }

    private static boolean cutting(Nearest near) {
        return CUTTING.contains(near.section().role());
    }

    private static boolean ofThePart(Nearest near) {
        return near.body().role() == Role.PART;
    }

    private static Margin margin(String setUp, OperationRoom room, Nearest near, double asked) {
        String body = near.body().name();
        String section = near.section().name();
        return Margin.of(
                "clearance",
                Caution.Place.of(setUp, room.operation(), body.replace(' ', '-'), body),
                Character.toUpperCase(section.charAt(0)) + section.substring(1) + " to the " + body,
                Figure.atLeast(asked, near.clearance(), Unit.MM));
    }
}
