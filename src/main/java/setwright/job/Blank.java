package setwright.job;

import java.util.Map;
import setwright.geometry.Side;

/** The piece that the job starts from. */
public sealed interface Blank permits Block {
    Kind kind();

    /** The state of every face; a face left out is {@link FaceState#SAWN}. */
    Map<Side, FaceState> faces();

    /** The kinds of blank. */
    enum Kind {
        BLOCK
    }
}
