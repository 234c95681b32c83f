package setwright.holding;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/** Wood screws that press two boards together on a sheet between them. Kernels in N and mm. */
public final class BoardScrews {
    /** Metal between boards of wood fibre. */
    public static final Friction ON_BOARD =
            new Friction(0.25, 0.15, Source.of("from memory: metal on wood 0.2 to 0.6"));

    public static final Table PRESS = new Table(
            "press of the screws of two boards",
            "1 kN a screw of 4 to 5 mm in board, 0.5 on a bad day; one every 60 mm round the sheet, four at least",
            Unit.KN,
            Source.of("common practice; from memory: a screw in fibre board pulls out at about 1.5 kN"));

    private static final double EACH = 1000;
    private static final double BAD_DAY = 0.5;
    private static final double APART = 60;

    private BoardScrews() {}

    /** How many go round a sheet. */
    public static int around(double length, double depth) {
        return Math.max(4, (int) Math.ceil(2 * (length + depth) / APART));
    }

    public static double press(int screws, Outlook outlook) {
        return screws * EACH * (outlook == Outlook.EXPECTED ? 1 : BAD_DAY);
    }
}
