package setwright.job.note;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import setwright.job.note.Draft.Said;

/** Refuses what a note says and its kind has no use for: nothing that is written is passed over. */
final class Leftovers {
    private Leftovers() {}

    /** @throws Halt at the first clause that is of no use */
    static void refuse(Draft draft, Head head) {
        Set<Said> useful = useful(head);
        for (Map.Entry<Said, Piece> said : draft.said.entrySet()) {
            if (!useful.contains(said.getKey())) {
                throw Halt.refused(
                        "A " + head.called() + " takes no "
                                + said.getKey().words().replaceFirst("^an? ", "") + "; leave out "
                                + Saying.at(said.getValue()) + ".",
                        said.getValue());
            }
        }
    }

    private static Set<Said> useful(Head head) {
        return switch (head) {
            case HOLE, TAP, REAM, BORE, COUNTERBORE, COUNTERSINK, SPOTFACE ->
                EnumSet.of(
                        Said.THROUGH,
                        Said.CENTRED,
                        Said.PLACE,
                        Said.IN_LINE,
                        Said.UPRIGHT,
                        Said.TURNED,
                        Said.CIRCLE,
                        Said.PITCH,
                        Said.ROWS,
                        Said.ANGLE);
            case SLOT, SLIT ->
                EnumSet.of(
                        Said.THROUGH,
                        Said.OPEN,
                        Said.CLOSED,
                        Said.CENTRED,
                        Said.PLACE,
                        Said.UPRIGHT,
                        Said.TURNED,
                        Said.FINISH);
            case POCKET ->
                EnumSet.of(Said.THROUGH, Said.CENTRED, Said.PLACE, Said.UPRIGHT, Said.TURNED, Said.RADIUS, Said.FINISH);
            case T_SLOT -> EnumSet.of(Said.OPEN, Said.CENTRED, Said.PLACE, Said.UPRIGHT, Said.TURNED, Said.FINISH);
            case KEYSEAT ->
                EnumSet.of(Said.OPEN, Said.CENTRED, Said.PLACE, Said.UPRIGHT, Said.TURNED, Said.ON, Said.FINISH);
            case DOVETAIL ->
                EnumSet.of(
                        Said.OPEN,
                        Said.CENTRED,
                        Said.PLACE,
                        Said.UPRIGHT,
                        Said.TURNED,
                        Said.MALE,
                        Said.ANGLE,
                        Said.FINISH);
            case GRADUATIONS -> EnumSet.of(Said.CENTRED, Said.PLACE, Said.ON, Said.LINES, Said.FINISH);
            case SPLINES -> EnumSet.of(Said.CENTRED, Said.PLACE, Said.ON, Said.FINISH);
            case TEETH -> EnumSet.of(Said.CENTRED, Said.PLACE, Said.ON, Said.MODULE, Said.ANGLE, Said.FINISH);
            case CHAMFER -> EnumSet.of(Said.ANGLE, Said.OTHER, Said.FINISH);
            case FACE -> EnumSet.of(Said.TO, Said.FINISH);
            case STEP, FLATS, SQUARE -> EnumSet.of(Said.FINISH);
        };
    }
}
