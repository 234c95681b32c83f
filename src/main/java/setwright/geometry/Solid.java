package setwright.geometry;

import java.util.List;
import setwright.geometry.plane.Region;

/** A body in millimetres with its upright axis along z. */
public sealed interface Solid permits Single, Union {
    Box box();

    /** The plan of everything between two heights; both heights the same: the plan at that height. */
    Region shadow(double zLow, double zHigh);

    /** The single solids that this one consists of. */
    List<Single> parts();

    /** The solid after a motion; where it cannot be shown exactly, a box that holds it. */
    Solid placed(Placement placement);

    Kind kind();

    /** Volume and centroid. */
    default Bulk bulk() {
        return Bulk.of(this);
    }

    enum Kind {
        PRISM,
        UPRIGHT_CYLINDER,
        UPRIGHT_CONE,
        UNION
    }
}
