package setwright.plan.hold;

import java.util.Locale;
import setwright.holding.Friction;
import setwright.plan.Rows;
import setwright.shop.Vise;

/**
 * The friction of the work in a vise's jaws, by the shop's row for the jaw face and the ISO 513 group of the work.
 * Non-ferrous work takes the row of brass, the lower of the two that are listed.
 */
final class JawFriction {
    private JawFriction() {}

    static Friction of(Vise.JawFace face, Rows rows) {
        return rows.friction(row(face, rows)).map(Friction::of).orElse(Friction.SMOOTH_HARDENED_JAW);
    }

    /** Soft jaws of brass or aluminium. */
    static Friction soft(Rows rows) {
        return rows.friction("friction-soft-jaw-steel").map(Friction::of).orElse(Friction.SMOOTH_HARDENED_JAW);
    }

    /** The work in smooth hardened jaws, as a chuck has them. */
    static Friction ofWork(Rows rows) {
        return of(Vise.JawFace.SMOOTH, rows);
    }

    /** A device of steel in the jaws, whatever the work is made of. */
    static Friction ofSteel(Vise.JawFace face, Rows rows) {
        return rows.friction("friction-" + face.name().toLowerCase(Locale.ROOT) + "-jaw-steel")
                .map(Friction::of)
                .orElse(Friction.SMOOTH_HARDENED_JAW);
    }

    private static String row(Vise.JawFace face, Rows rows) {
        return switch (face) {
            case GROOVED -> "friction-grooved-jaw-steel";
            case SERRATED -> "friction-serrated-jaw-steel";
            case SMOOTH ->
                switch (rows.material().group()) {
                    case K -> "friction-smooth-jaw-grey-iron";
                    case N -> "friction-smooth-jaw-brass";
                    case P, M, S, H -> "friction-smooth-jaw-steel";
                };
        };
    }
}
