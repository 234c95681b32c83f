package setwright.job;

import java.util.Map;
import setwright.geometry.Side;

/** A round tube, its axis along z as drawn. */
public record Tube(Size outside, Size bore, Size length, Map<Side, FaceState> faces) implements Blank {
    public Tube {
        faces = Blank.bySide(faces);
    }

    @Override
    public Block envelope() {
        return new Block(outside, outside, length, faces);
    }

    @Override
    public Kind kind() {
        return Kind.TUBE;
    }
}
