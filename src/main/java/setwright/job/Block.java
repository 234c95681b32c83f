package setwright.job;

import java.util.Map;
import setwright.geometry.Side;

/** A rectangular block: length along x, depth along y, height along z as drawn. */
public record Block(Size length, Size depth, Size height, Map<Side, FaceState> faces) implements Blank {
    public Block {
        faces = Blank.bySide(faces);
    }

    @Override
    public Block envelope() {
        return this;
    }

    @Override
    public Kind kind() {
        return Kind.BLOCK;
    }
}
