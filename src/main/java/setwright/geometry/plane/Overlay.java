package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The booleans of regions. */
final class Overlay {
    private final How how;
    private final double flatness;

    Overlay(How how, double flatness) {
        this.how = how;
        this.flatness = flatness;
    }

    enum How {
        PLUS(OverlayNG.UNION),
        MINUS(OverlayNG.DIFFERENCE),
        MEET(OverlayNG.INTERSECTION);

        private final int code;

        How(int code) {
            this.code = code;
        }
    }

    Region of(Region body, Region other) {
        if (body.isEmpty() || other.isEmpty() || body.box().gap(other.box()) > Gap.MEETS) {
            return apart(body, other);
        }
        if (outlinesMeet(body, other)) {
            return withSpared(body, other);
        }
        return nested(body, other);
    }

    private Region apart(Region body, Region other) {
        return switch (how) {
            case PLUS -> joined(body, other);
            case MINUS -> body;
            case MEET -> Region.NONE;
        };
    }

    private static Region joined(Region a, Region b) {
        return new Region(
                Stream.concat(a.outers().stream(), b.outers().stream()).toList(),
                Stream.concat(a.holes().stream(), b.holes().stream()).toList());
    }

    private static boolean outlinesMeet(Region a, Region b) {
        return a.outlines().anyMatch(outline -> meetsAny(outline, b));
    }

    private static boolean meetsAny(Outline outline, Region region) {
        return region.outlines().anyMatch(outline::meets);
    }

    private static boolean inside(Outline outline, Region region) {
        return region.contains(outline.edges().get(0).from());
    }

    /** No outlines meet: each is kept or dropped as a whole. */
    private Region nested(Region body, Region other) {
        boolean bodyInside = how == How.MEET;
        boolean otherInside = how != How.PLUS;
        List<Outline> outers = new ArrayList<>(kept(body.outers(), other, bodyInside));
        List<Outline> holes = new ArrayList<>(kept(body.holes(), other, bodyInside));
        List<Outline> otherOuters = kept(other.outers(), body, otherInside);
        List<Outline> otherHoles = kept(other.holes(), body, otherInside);
        outers.addAll(how == How.MINUS ? otherHoles : otherOuters);
        holes.addAll(how == How.MINUS ? otherOuters : otherHoles);
        return new Region(outers, holes);
    }

    private static List<Outline> kept(List<Outline> outlines, Region region, boolean wanted) {
        return outlines.stream()
                .filter(outline -> inside(outline, region) == wanted)
                .toList();
    }

    /** Outlines meet: round holes that have no part in it are spared, so that they stay round. */
    private Region withSpared(Region body, Region other) {
        List<Outline> spared = new ArrayList<>();
        List<Outline> part = new ArrayList<>();
        for (Outline hole : body.holes()) {
            (isSpared(hole, body, other) ? spared : part).add(hole);
        }
        Region rest = spared.isEmpty() ? body : new Region(body.outers(), part);
        return straight(rest, other).withHoles(how == How.MEET ? List.of() : spared);
    }

    private static boolean isSpared(Outline hole, Region body, Region other) {
        Stream<Outline> islands = Stream.concat(body.outers().stream(), other.outlines());
        return !meetsAny(hole, other)
                && !inside(hole, other)
                && islands.noneMatch(
                        island -> hole.contains(island.edges().get(0).from()));
    }

    private Region straight(Region body, Region other) {
        Flat cut = other.flat(flatness);
        Geometry second = how == How.MINUS ? cut.inward() : cut.outward();
        Geometry result = OverlayNGRobust.overlay(body.flat(flatness).outward(), second, how.code);
        List<Outline> outers = new ArrayList<>();
        List<Outline> holes = new ArrayList<>();
        for (int i = 0; i < result.getNumGeometries(); i++) {
            if (result.getGeometryN(i) instanceof Polygon polygon && !isSliver(polygon)) {
                outers.add(outline(polygon.getExteriorRing()));
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    holes.add(outline(polygon.getInteriorRingN(hole)));
                }
            }
        }
        return new Region(outers, holes);
    }

    /** Thinner than what making arcs straight leaves between two equal arcs. */
    private boolean isSliver(Polygon polygon) {
        return polygon.getArea() <= 1.1 * flatness * polygon.getLength();
    }

    private static Outline outline(LinearRing ring) {
        Coordinate[] corners = ring.getCoordinates();
        List<Point2> points = new ArrayList<>();
        for (int i = 1; i < corners.length; i++) {
            points.add(new Point2(corners[i].x, corners[i].y));
        }
        return Outline.polygon(points);
    }
}
