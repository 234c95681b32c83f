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
import setwright.shop.EdgeClamp;
import setwright.shop.StepBlocks;
import setwright.shop.Strap;

/** Strap, stud, nut and heel as bodies, or an edge clamp, or a bolt. */
final class StrapBodies {
    /** Width of a nut across its corners in diameters of its thread (from memory: DIN 6330, 18 mm on M12). */
    private static final double NUT_WIDTH = 1.75;

    /** Width of a washer in diameters of its thread (from memory: DIN 6340 and DIN 6319, 24 to 35 mm on M12). */
    private static final double WASHER_WIDTH = 2.5;

    private StrapBodies() {}

    static List<Body> of(StrapPlace place, Rows rows) {
        return switch (place.by()) {
            case STRAP -> place.strap().map(row -> strap(place, row, rows)).orElse(List.of());
            case EDGE_CLAMP ->
                place.edgeClamp().map(row -> List.of(edge(place, row))).orElse(List.of());
            case BOLT -> bolt(place);
        };
    }

    private static List<Body> strap(StrapPlace place, Strap row, Rows rows) {
        double width = row.width().inside();
        double step = rows.all(StepBlocks.class).stream()
                .mapToDouble(blocks -> blocks.width().inside())
                .findFirst()
                .orElse(width);
        Point2 nose = place.pad().minus(place.toward().times(StrapPlace.NOSE));
        Point2 end = nose.plus(place.toward().times(row.length().inside()));
        Point2 half = place.toward().times(step / 2);
        Region heel = bar(place.heelAt().minus(half), place.heelAt().plus(half), step);
        double low = Math.min(place.padHeight(), place.heelHeight());
        double high = Math.max(place.padHeight(), place.heelHeight())
                + row.thickness().inside();
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Body(place.name(), Role.STRAP, new Prism(bar(nose, end, width), low, high)));
        bodies.addAll(studAndNut(place));
        bodies.add(new Body(
                "step block of the " + place.name(),
                Role.STEP_BLOCK,
                new Prism(heel, place.foot(), Math.max(place.foot(), place.heelHeight()))));
        return bodies;
    }

    /** From the edge of the part outward, its screw sunk into it. */
    private static Body edge(StrapPlace place, EdgeClamp row) {
        Point2 end = place.pad().plus(place.toward().times(row.length().inside()));
        Region plan = bar(place.pad(), end, row.width().inside());
        return new Body(
                place.name(),
                Role.STRAP,
                new Prism(plan, place.foot(), place.foot() + row.height().inside()));
    }

    /** The washer stands for the clamp. */
    private static List<Body> bolt(StrapPlace place) {
        double washer = WASHER_WIDTH * place.stud();
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Body(
                place.name(),
                Role.STRAP,
                new UprightCylinder(place.pad(), washer / 2, place.padHeight(), place.nutSeat())));
        bodies.addAll(studAndNut(place));
        return bodies;
    }

    private static List<Body> studAndNut(StrapPlace place) {
        return List.of(
                round(place, "stud", Role.STUD, place.stud(), place.foot(), place.studTop()),
                round(place, "nut", Role.STUD_NUT, NUT_WIDTH * place.stud(), place.nutSeat(), place.nutTop()));
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
