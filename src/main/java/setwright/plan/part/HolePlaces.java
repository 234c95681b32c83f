package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Point2;
import setwright.job.Hole;
import setwright.job.Pattern;

/**
 * Where the holes of a feature are. With its side up and no quarter turn, u runs along the table's X and v along Y,
 * counted from the middle of the side, mm.
 */
public final class HolePlaces {
    private HolePlaces() {}

    /** Places from the middle of a side of the given nominal size, turned by quarter turns anticlockwise from above. */
    public static List<Point2> fromMiddle(Hole hole, double sizeU, double sizeV, int quarterTurns) {
        return onSide(hole.place()).stream()
                .map(place -> fromMiddle(hole.place().from(), place, sizeU, sizeV))
                .map(place -> turned(place, quarterTurns))
                .toList();
    }

    private static List<Point2> onSide(Pattern pattern) {
        return switch (pattern.kind()) {
            case POINTS -> points((Pattern.Points) pattern);
            case GRID -> grid((Pattern.Grid) pattern);
            case LINE -> line((Pattern.Line) pattern);
            case BOLT_CIRCLE -> circle((Pattern.BoltCircle) pattern);
        };
    }

    private static List<Point2> points(Pattern.Points points) {
        return points.places().stream()
                .map(place -> new Point2(place.u().inside(), place.v().inside()))
                .toList();
    }

    /** Row by row from the lower left, to and fro, so that the way between holes is short. */
    private static List<Point2> grid(Pattern.Grid grid) {
        List<Point2> found = new ArrayList<>();
        for (int row = 0; row < grid.rows(); row++) {
            for (int step = 0; step < grid.columns(); step++) {
                int column = row % 2 == 0 ? step : grid.columns() - 1 - step;
                found.add(new Point2(
                        grid.middle().u().inside()
                                + (column - (grid.columns() - 1) / 2.0)
                                        * grid.spacingU().inside(),
                        grid.middle().v().inside()
                                + (row - (grid.rows() - 1) / 2.0)
                                        * grid.spacingV().inside()));
            }
        }
        return found;
    }

    private static List<Point2> line(Pattern.Line line) {
        double angle = line.angle().inside();
        List<Point2> found = new ArrayList<>();
        for (int i = 0; i < line.count(); i++) {
            double along = i * line.spacing().inside();
            found.add(new Point2(
                    line.first().u().inside() + along * StrictMath.cos(angle),
                    line.first().v().inside() + along * StrictMath.sin(angle)));
        }
        return found;
    }

    private static List<Point2> circle(Pattern.BoltCircle circle) {
        double radius = circle.diameter().inside() / 2;
        List<Point2> found = new ArrayList<>();
        for (int i = 0; i < circle.count(); i++) {
            double angle = circle.start().inside() + 2 * Math.PI * i / circle.count();
            found.add(new Point2(
                    circle.centre().u().inside() + radius * StrictMath.cos(angle),
                    circle.centre().v().inside() + radius * StrictMath.sin(angle)));
        }
        return found;
    }

    static Point2 fromMiddle(Pattern.Datum from, Point2 place, double sizeU, double sizeV) {
        double u = switch (from) {
            case CENTRE -> place.x();
            case LEFT_LOW, LEFT_HIGH -> place.x() - sizeU / 2;
            case RIGHT_LOW, RIGHT_HIGH -> sizeU / 2 - place.x();
        };
        double v = switch (from) {
            case CENTRE -> place.y();
            case LEFT_LOW, RIGHT_LOW -> place.y() - sizeV / 2;
            case LEFT_HIGH, RIGHT_HIGH -> sizeV / 2 - place.y();
        };
        return new Point2(u, v);
    }

    private static Point2 turned(Point2 place, int quarterTurns) {
        return switch (Math.floorMod(quarterTurns, 4)) {
            case 1 -> new Point2(-place.y(), place.x());
            case 2 -> new Point2(-place.x(), -place.y());
            case 3 -> new Point2(place.y(), -place.x());
            default -> place;
        };
    }
}
