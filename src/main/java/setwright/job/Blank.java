package setwright.job;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import setwright.geometry.Side;

/** The piece that the job starts from. */
public sealed interface Blank permits Block, Plate, RoundBar, Tube, ProfileBar, OutlineBlank, RoughBody {
    Kind kind();

    /** The state of every face; a face left out is {@link FaceState#SAWN}. */
    Map<Side, FaceState> faces();

    /** The smallest block around it, in the part frame: length along x, depth along y, height along z. */
    Block envelope();

    /** The kinds of blank. */
    enum Kind {
        BLOCK,
        PLATE,
        ROUND_BAR,
        TUBE,
        PROFILE_BAR,
        OUTLINE,
        ROUGH_BODY
    }

    /** The states in the order of the sides, not to be changed. */
    static Map<Side, FaceState> bySide(Map<Side, FaceState> faces) {
        Map<Side, FaceState> bySide = new EnumMap<>(Side.class);
        bySide.putAll(faces);
        return Collections.unmodifiableMap(bySide);
    }
}
