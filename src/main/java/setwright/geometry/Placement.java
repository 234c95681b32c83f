package setwright.geometry;

/** Where a part lies on the table: its attitude, and where its own origin then is on the table. */
public record Placement(Attitude attitude, Point3 origin) {
    /** Nothing moved. */
    public static final Placement AS_DRAWN = shift(Point3.ORIGIN);

    /** The placement of a blank whose least X, Y and Z on the table are {@code low}. */
    public static Placement resting(Attitude attitude, Point3 blank, Point3 low) {
        Point3 far = attitude.toTable(blank);
        Point3 least = new Point3(Math.min(0, far.x()), Math.min(0, far.y()), Math.min(0, far.z()));
        return new Placement(attitude, low.minus(least));
    }

    /** A mere shift. */
    public static Placement shift(Point3 by) {
        return new Placement(Attitude.AS_DRAWN, by);
    }

    /** The motion back: what this takes from the part to the table, that takes from the table to the part. */
    public Placement inverse() {
        return new Placement(attitude.inverse(), attitude.toPart(origin).times(-1));
    }

    /** This motion, then {@code next}. */
    public Placement then(Placement next) {
        return new Placement(attitude.then(next.attitude), next.toTable(origin));
    }

    /** A place in the part as a place on the table. */
    public Point3 toTable(Point3 part) {
        return attitude.toTable(part).plus(origin);
    }

    /** A place on the table as a place in the part. */
    public Point3 toPart(Point3 table) {
        return attitude.toPart(table.minus(origin));
    }

    /** A box of the part as a box on the table. */
    public Box of(Box box) {
        return box.isEmpty() ? box : Box.of(toTable(box.low()), toTable(box.high()));
    }
}
