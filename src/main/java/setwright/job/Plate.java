package setwright.job;

import java.util.Map;
import setwright.geometry.Side;

/** A plate cut from sheet or plate stock: length along x, depth along y, thickness along z. */
public record Plate(Size length, Size depth, Size thickness, Map<Side, FaceState> faces) implements Blank {
    public Plate {
        faces = Blank.bySide(faces);
    }

    @Override
    public Block envelope() {
        return new Block(length, depth, thickness, faces);
    }

    @Override
    public Kind kind() {
        return Kind.PLATE;
    }
}
