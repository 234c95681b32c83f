package setwright.plan.hold;

import setwright.holding.Friction;
import setwright.plan.Rows;

/** The friction of the work on what bears it, by the shop's row for the two materials. */
final class BearingFriction {
    private BearingFriction() {}

    /** On a table or device of cast iron. */
    static Friction onTable(Rows rows) {
        return row(
                switch (rows.material().group()) {
                    case K -> "friction-cast-iron-on-cast-iron";
                    case N -> "friction-aluminium-joint";
                    case P, M, S, H -> "friction-steel-on-cast-iron";
                },
                rows);
    }

    /** On blocks of steel. */
    static Friction onSteel(Rows rows) {
        return row(
                switch (rows.material().group()) {
                    case K -> "friction-steel-on-cast-iron";
                    case N -> "friction-aluminium-joint";
                    case P, M, S, H -> "friction-steel-on-steel";
                },
                rows);
    }

    private static Friction row(String id, Rows rows) {
        return rows.friction(id).map(Friction::of).orElse(Friction.GROUND_PARALLEL);
    }
}
