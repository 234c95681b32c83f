package setwright.job;

import java.util.List;
import java.util.Map;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A casting, forging or weldment: the box around it, and the places where it can be touched. */
public record RoughBody(Size length, Size depth, Size height, List<TouchPoint> points, Map<Side, FaceState> faces)
        implements Blank {
    public RoughBody {
        points = List.copyOf(points);
        faces = Blank.bySide(faces);
    }

    /**
     * A place where the body can be touched, jacked or strapped.
     *
     * @param below how far it lies inside the box, square to the side
     */
    public record TouchPoint(String name, Side side, Typed<Length> u, Typed<Length> v, Typed<Length> below, Use use) {}

    /** What a place is good for. */
    public enum Use {
        REST,
        JACK,
        STRAP
    }

    @Override
    public Block envelope() {
        return new Block(length, depth, height, faces);
    }

    @Override
    public Kind kind() {
        return Kind.ROUGH_BODY;
    }
}
