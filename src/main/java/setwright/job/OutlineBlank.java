package setwright.job;

import java.util.List;
import java.util.Map;
import setwright.geometry.Side;

/**
 * A piece of any outline, upright walls: its corners in order anticlockwise from above, x to the right and y to the back.
 *
 * @param length of the box around it, along x
 * @param depth of the box around it, along y
 * @param height along z
 */
public record OutlineBlank(List<Corner> corners, Size length, Size depth, Size height, Map<Side, FaceState> faces)
        implements Blank {
    public OutlineBlank {
        corners = List.copyOf(corners);
        faces = Blank.bySide(faces);
    }

    @Override
    public Block envelope() {
        return new Block(length, depth, height, faces);
    }

    @Override
    public Kind kind() {
        return Kind.OUTLINE;
    }
}
