package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnStrap;

/** What straps are called at the machine: by the side that they come from, and among several of one side by where. */
final class StrapName {
    private StrapName() {}

    /**
     * The names of straps, in their order, for instance {@code left back strap}.
     *
     * @param heels direction from each pad to its heel, one long
     */
    static List<String> all(List<DrawnStrap> straps, List<Point2> pads, List<Point2> heels) {
        List<String> sides = heels.stream().map(StrapName::side).toList();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < pads.size(); i++) {
            names.add(distinct(names, name(i, sides, pads) + " " + noun(straps.get(i))));
        }
        return names;
    }

    private static String noun(DrawnStrap strap) {
        return switch (strap.by().value()) {
            case STRAP -> "strap";
            case EDGE_CLAMP -> "edge clamp";
            case BOLT -> "bolt";
        };
    }

    private static String side(Point2 toward) {
        if (Math.abs(toward.x()) >= Math.abs(toward.y())) {
            return toward.x() < 0 ? "left" : "right";
        }
        return toward.y() < 0 ? "front" : "back";
    }

    private static String name(int strap, List<String> sides, List<Point2> pads) {
        String side = sides.get(strap);
        List<Point2> group = new ArrayList<>();
        for (int i = 0; i < pads.size(); i++) {
            if (sides.get(i).equals(side)) {
                group.add(pads.get(i));
            }
        }
        if (group.size() == 1) {
            return side;
        }
        boolean end = side.equals("left") || side.equals("right");
        double middle = group.stream()
                .mapToDouble(pad -> end ? pad.y() : pad.x())
                .average()
                .orElse(0);
        Point2 pad = pads.get(strap);
        String where = end ? (pad.y() < middle ? "front" : "back") : pad.x() < middle ? "left" : "right";
        return side + " " + where;
    }

    private static String distinct(List<String> before, String name) {
        String distinct = name;
        for (int number = 2; before.contains(distinct); number++) {
            distinct = name + " " + number;
        }
        return distinct;
    }
}
