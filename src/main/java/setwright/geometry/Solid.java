package setwright.geometry;

import java.util.List;
import setwright.geometry.plane.Region;

/** A body in millimetres; z is up. */
public sealed interface Solid permits Single, Union {
    Box box();

    /** The plan of everything between two heights; both heights the same: the plan at that height. */
    Region shadow(double zLow, double zHigh);

    /** The single solids that this one consists of. */
    List<Single> parts();

    /** The solid laid on another side; where it cannot be shown exactly, a body that holds it. */
    default Solid placed(Placement placement) {
        return moved(Motion.of(placement));
    }

    /** The solid after a motion to any attitude; where it cannot be shown exactly, a body that holds it. */
    Solid moved(Motion motion);

    Kind kind();

    /** Volume and centroid. */
    default Bulk bulk() {
        return Bulk.of(this);
    }

    enum Kind {
        PRISM,
        UPRIGHT_CYLINDER,
        UPRIGHT_CONE,
        TURNED,
        POLYHEDRON,
        UNION
    }
}
