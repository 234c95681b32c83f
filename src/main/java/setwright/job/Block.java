package setwright.job;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import setwright.geometry.Side;

/** A rectangular block: length along x, depth along y, height along z as drawn. */
public record Block(Size length, Size depth, Size height, Map<Side, FaceState> faces) implements Blank {
    public Block {
        Map<Side, FaceState> bySide = new EnumMap<>(Side.class);
        bySide.putAll(faces);
        faces = Collections.unmodifiableMap(bySide);
    }

    @Override
    public Kind kind() {
        return Kind.BLOCK;
    }
}
