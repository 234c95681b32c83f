package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.plan.Rows;
import setwright.shop.StepBlocks;

/** Strap, stud, nut and heel of a strap as bodies. */
final class StrapBodies {
    /** Width of a nut across its corners in diameters of its thread (from memory: DIN 6330, 18 mm on M12). */
    private static final double NUT_WIDTH = 1.75;

    private StrapBodies() {}

    static List<Body> of(StrapPlace place, Rows rows) {
        double width = place.strap().width().inside();
        double step = rows.all(StepBlocks.class).stream()
                .mapToDouble(row -> row.width().inside())
                .findFirst()
                .orElse(width);
        Point2 nose = place.pad().minus(place.toward().times(StrapPlace.NOSE));
        Point2 end = nose.plus(place.toward().times(place.strap().length().inside()));
        Point2 half = place.toward().times(step / 2);
        Region heel = bar(place.heelAt().minus(half), place.heelAt().plus(half), step);
        List<Body> bodies = new ArrayList<>();
        double low = Math.min(place.padHeight(), place.heelHeight());
        bodies.add(new Body(place.name(), Role.STRAP, new Prism(bar(nose, end, width), low, place.strapTop())));
        bodies.add(round(place, "stud", Role.STUD, place.stud(), place.foot(), place.studTop()));
        bodies.add(round(place, "nut", Role.STUD_NUT, NUT_WIDTH * place.stud(), place.strapTop(), place.nutTop()));
        bodies.add(new Body(
                "step block of the " + place.name(),
                Role.STEP_BLOCK,
                new Prism(heel, place.foot(), Math.max(place.foot(), place.heelHeight()))));
        return bodies;
    }

    private static Body round(StrapPlace place, String what, Role role, double diameter, double low, double high) {
        return new Body(
                what + " of the " + place.name(),
                role,
                new UprightCylinder(place.studAt(), diameter / 2, low, Math.max(low, high)));
    }

    /** The plan of a bar of a width from one place to another. */
    private static Region bar(Point2 from, Point2 to, double width) {
        Point2 way = to.minus(from);
        Point2 side = new Point2(-way.y(), way.x()).times(width / 2 / way.length());
        return Region.of(Outline.polygon(List.of(from.minus(side), to.minus(side), to.plus(side), from.plus(side))));
    }
}
