package setwright.job;

import java.util.Map;
import setwright.geometry.Side;

/** A round bar: its axis along z as drawn; lying or standing is a matter of the side that is up. */
public record RoundBar(Size diameter, Size length, Map<Side, FaceState> faces) implements Blank {
    public RoundBar {
        faces = Blank.bySide(faces);
    }

    @Override
    public Block envelope() {
        return new Block(diameter, diameter, length, faces);
    }

    @Override
    public Kind kind() {
        return Kind.ROUND_BAR;
    }
}
