package setwright.plan.part;

import java.util.List;
import java.util.Objects;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.reach.DropOut;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Taper;

/** What has to come down below the nose to change from one operation's tool to the next. */
public final class DropOuts {
    private DropOuts() {}

    /** The whole holder where its neighbour uses another, else what the holder grips. */
    public static DropOut of(boolean stays, DrawnOperation operation, Cutter cutter, Holder holder) {
        double grip = Math.max(
                0,
                cutter.overallLength().inside() - operation.stickOut().value().inside());
        return switch (holder.style()) {
            case SPINDLE_COLLET -> DropOut.r8Collet(grip);
            case COLLET_CHUCK, SCREWED_SHANK_CHUCK -> stays ? DropOut.colletChuck(grip) : shank(holder.taper());
            case SET_SCREW -> stays ? DropOut.setScrewHolder(grip) : shank(holder.taper());
            case TAPPING_HEAD, FLOATING_REAMER_HOLDER -> stays ? DropOut.colletChuck(grip) : shank(holder.taper());
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> stays ? DropOut.drillChuck(grip) : shank(holder.taper());
            case TAPER_SOCKET -> stays ? DropOut.morse(morse(cutter)) : shank(holder.taper());
            case FACE_MILL_ARBOR, SHELL_MILL_ARBOR, SHRINK, FLY_CUTTER_BODY, BORING_HEAD, STUB_ARBOR ->
                shank(holder.taper());
        };
    }

    /** By the diameter of the taper at its gauge line: 12.065, 17.780 or 23.825 mm for no. 1 to 3, 31.267 for no. 4. */
    private static int morse(Cutter cutter) {
        double gauge = cutter.shank().inside();
        return gauge < 15 ? 1 : gauge < 20 ? 2 : gauge < 27 ? 3 : 4;
    }

    private static DropOut shank(Taper taper) {
        return switch (taper) {
            case R8 -> DropOut.r8Shank();
            case ISO_30 -> DropOut.steepTaper(30);
            case ISO_40 -> DropOut.steepTaper(40);
            case ISO_50 -> DropOut.steepTaper(50);
            case MORSE_2 -> DropOut.morse(2);
            case MORSE_4 -> DropOut.morse(4);
            case ODD -> DropOut.r8Shank();
            case MORSE_3 -> DropOut.morse(3);
        };
    }

    /** Whether the operations before and after use the same holder, so that it never leaves the spindle here. */
    public static boolean staysIn(DrawnSetUp setUp, DrawnOperation operation) {
        List<DrawnOperation> all = setUp.operations();
        int at = all.indexOf(operation);
        String holder = operation.holder().value();
        boolean before = at > 0 && Objects.equals(all.get(at - 1).holder().value(), holder);
        boolean after =
                at < all.size() - 1 && Objects.equals(all.get(at + 1).holder().value(), holder);
        return before && after;
    }
}
