package setwright.geometry.plane;

/**
 * A rigid motion of the plan: {@code x' = xx x + xy y + dx}, {@code y' = yx x + yy y + dy}. Quarter turns and turning
 * over are exact.
 */
public record PlanMap(double xx, double xy, double yx, double yy, double dx, double dy) {
    public static PlanMap shift(double dx, double dy) {
        return new PlanMap(1, 0, 0, 1, dx, dy);
    }

    /** Turns anticlockwise about the origin. */
    public static PlanMap turn(double radians) {
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        return new PlanMap(cos, -sin, sin, cos, 0, 0);
    }

    /** Quarter turns anticlockwise about the origin. */
    public static PlanMap quarterTurns(int turns) {
        return switch (Math.floorMod(turns, 4)) {
            case 0 -> new PlanMap(1, 0, 0, 1, 0, 0);
            case 1 -> new PlanMap(0, -1, 1, 0, 0, 0);
            case 2 -> new PlanMap(-1, 0, 0, -1, 0, 0);
            default -> new PlanMap(0, 1, -1, 0, 0, 0);
        };
    }

    /** This motion, then {@code next}. */
    public PlanMap then(PlanMap next) {
        Point2 shift = next.of(new Point2(dx, dy));
        return new PlanMap(
                next.xx * xx + next.xy * yx,
                next.xx * xy + next.xy * yy,
                next.yx * xx + next.yy * yx,
                next.yx * xy + next.yy * yy,
                shift.x(),
                shift.y());
    }

    public Point2 of(Point2 p) {
        return new Point2(xx * p.x() + xy * p.y() + dx, yx * p.x() + yy * p.y() + dy);
    }

    /** True where what ran anticlockwise runs clockwise afterwards: the plan was turned over. */
    public boolean turnsOver() {
        return xx * yy - xy * yx < 0;
    }
}
