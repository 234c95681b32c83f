package setwright.geometry;

/**
 * How a part lies on the table: one side up, its u along the table's X and its v along Y, then turned anticlockwise,
 * seen from above, by quarter turns. All in whole numbers, so that nothing is rounded.
 */
public record Attitude(Side up, int quarterTurns) {
    /** As drawn: top up, length along X. */
    public static final Attitude AS_DRAWN = new Attitude(Side.TOP, 0);

    public Attitude {
        quarterTurns = Math.floorMod(quarterTurns, 4);
    }

    private static Attitude of(Heading tableX, Heading tableZ) {
        Side up = Side.facing(tableZ);
        for (int turns = 0; turns < 4; turns++) {
            Attitude attitude = new Attitude(up, turns);
            if (attitude.tableX() == tableX) {
                return attitude;
            }
        }
        throw new IllegalArgumentException(tableX + " cannot lie along X with " + tableZ + " up.");
    }

    /** The attitude that undoes this one. */
    public Attitude inverse() {
        return of(onTable(Heading.PLUS_X), onTable(Heading.PLUS_Z));
    }

    /** This attitude, and what lies so then turned by {@code next}. */
    public Attitude then(Attitude next) {
        return of(inPart(next.tableX()), inPart(next.tableZ()));
    }

    /** The part direction that lies along the table's X. */
    public Heading tableX() {
        return switch (quarterTurns) {
            case 0 -> up.u();
            case 1 -> up.v().opposite();
            case 2 -> up.u().opposite();
            default -> up.v();
        };
    }

    /** The part direction that lies along the table's Y. */
    public Heading tableY() {
        return switch (quarterTurns) {
            case 0 -> up.v();
            case 1 -> up.u();
            case 2 -> up.v().opposite();
            default -> up.u().opposite();
        };
    }

    /** The part direction that points up. */
    public Heading tableZ() {
        return up.outward();
    }

    /** A step in the part as a step on the table. */
    public Point3 toTable(Point3 step) {
        return new Point3(tableX().of(step), tableY().of(step), tableZ().of(step));
    }

    /** A step on the table as a step in the part. */
    public Point3 toPart(Point3 step) {
        return tableX().step(step.x()).plus(tableY().step(step.y())).plus(tableZ().step(step.z()));
    }

    /** Where a side of the part faces on the table. */
    public Heading facing(Side side) {
        return onTable(side.outward());
    }

    /** The side of the part that faces a table direction: {@code PLUS_Y} the column, {@code MINUS_Y} the machinist. */
    public Side sideFacing(Heading table) {
        return Side.facing(inPart(table));
    }

    private Heading onTable(Heading part) {
        return Heading.along(tableX().dot(part), tableY().dot(part), tableZ().dot(part));
    }

    private Heading inPart(Heading table) {
        return switch (table) {
            case PLUS_X -> tableX();
            case MINUS_X -> tableX().opposite();
            case PLUS_Y -> tableY();
            case MINUS_Y -> tableY().opposite();
            case PLUS_Z -> tableZ();
            case MINUS_Z -> tableZ().opposite();
        };
    }

    /** The size of a blank as it lies: along X, along Y and upward. */
    public Point3 size(Point3 blank) {
        Point3 turned = toTable(blank);
        return new Point3(Math.abs(turned.x()), Math.abs(turned.y()), Math.abs(turned.z()));
    }
}
