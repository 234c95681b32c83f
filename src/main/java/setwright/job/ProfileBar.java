package setwright.job;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;

/**
 * A drawn, rolled or extruded bar of some other section, its length along x.
 *
 * @param section its form
 * @param width along y; across the flats of a hexagon
 * @param height along z
 * @param wall thickness of its legs or walls; null where it is solid
 */
public record ProfileBar(
        Section section, Size width, Size height, @Nullable Size wall, Size length, Map<Side, FaceState> faces)
        implements Blank {
    public ProfileBar {
        faces = Blank.bySide(faces);
    }

    /** The forms of section. */
    public enum Section {
        ANGLE,
        CHANNEL,
        TEE,
        I_BEAM,
        HEXAGON,
        BOX
    }

    @Override
    public Block envelope() {
        return new Block(length, width, height, faces);
    }

    @Override
    public Kind kind() {
        return Kind.PROFILE_BAR;
    }
}
