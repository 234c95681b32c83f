package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.Attitude;
import setwright.geometry.Point3;
import setwright.job.InclinedFace;
import setwright.job.Tilt;

/** Where an inclined face comes out level once the part is tilted. */
final class InclinedLevel {
    /** Out of level by less than this: 0.05 degrees. */
    private static final double LEVEL = 1 - StrictMath.cos(StrictMath.toRadians(0.05));

    private InclinedLevel() {}

    /** Height over the table; empty where the tilt does not bring the face level. */
    static Optional<Double> of(InclinedFace face, Laid laid, Heights heights, Extent square) {
        Tilt tilt = laid.tilt();
        if (tilt == null || !laid.tilted() || face.side() != laid.up()) {
            return Optional.empty();
        }
        Attitude attitude = new Attitude(laid.up(), laid.quarterTurns());
        Point3 falls = attitude.toTable(
                switch (face.falls()) {
                    case RIGHT -> face.side().u().step(1);
                    case LEFT -> face.side().u().step(-1);
                    case HIGH -> face.side().v().step(1);
                    case LOW -> face.side().v().step(-1);
                });
        double angle = face.angle().inside();
        Point3 normal = falls.times(StrictMath.sin(angle)).plus(new Point3(0, 0, StrictMath.cos(angle)));
        for (int way : new int[] {1, -1}) {
            Turn turn = new Turn(tilt.about(), way * tilt.angle().inside());
            if (turn.of(normal).z() >= 1 - LEVEL) {
                double lowest = square.corners().stream()
                        .mapToDouble(corner -> turn.of(corner).z())
                        .min()
                        .orElse(0);
                return Optional.of(heights.partBottom()
                        + turn.of(onFace(face, falls, square)).z()
                        - lowest);
            }
        }
        return Optional.empty();
    }

    /** A place of the face, from the middle of the part before it is tilted. */
    private static Point3 onFace(InclinedFace face, Point3 falls, Extent square) {
        double half = Math.abs(falls.x()) > 0.5 ? square.along() / 2 : square.across() / 2;
        double top = square.upright() / 2;
        return face.depth() == null
                ? falls.times(-half).plus(new Point3(0, 0, top))
                : falls.times(half).plus(new Point3(0, 0, top - MilledFeatures.mm(face.depth())));
    }

    /** A turn about an axis of the table, by the right hand. */
    private record Turn(Tilt.Axis about, double angle) {
        Point3 of(Point3 p) {
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            return switch (about) {
                case X -> new Point3(p.x(), cos * p.y() - sin * p.z(), sin * p.y() + cos * p.z());
                case Y -> new Point3(cos * p.x() + sin * p.z(), p.y(), cos * p.z() - sin * p.x());
            };
        }
    }
}
