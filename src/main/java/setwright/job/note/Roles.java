package setwright.job.note;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.job.Size;
import setwright.job.note.Measured.Role;

/** Which size of a chain is which: first by its word, the rest in the order in which such notes are written. */
final class Roles {
    private final Map<Role, Measured> byRole = new EnumMap<>(Role.class);

    private Roles() {}

    /**
     * @param order for instance width, depth, length
     * @param form how such a note is written, for the message
     */
    static Roles of(List<Measured> chain, List<Role> order, String form) {
        Roles roles = new Roles();
        for (Measured size : chain) {
            if (size.role() != Role.UNSAID) {
                Role role = order.contains(size.role()) ? size.role() : likeness(size.role(), order);
                roles.put(role, size, form);
            }
        }
        for (Measured size : chain) {
            if (size.role() == Role.UNSAID) {
                Role free = order.stream()
                        .filter(role -> !roles.byRole.containsKey(role))
                        .findFirst()
                        .orElseThrow(() -> tooMany(size, form));
                roles.byRole.put(free, size);
            }
        }
        return roles;
    }

    private static @Nullable Role likeness(Role said, List<Role> order) {
        boolean across = said == Role.DIAMETER || said == Role.WIDTH;
        return across
                ? order.stream()
                        .filter(role -> role == Role.WIDTH || role == Role.DIAMETER)
                        .findFirst()
                        .orElse(null)
                : null;
    }

    private void put(@Nullable Role role, Measured size, String form) {
        if (role == null || byRole.containsKey(role)) {
            throw tooMany(size, form);
        }
        byRole.put(role, size);
    }

    private static Halt tooMany(Measured size, String form) {
        return Halt.refused(
                Saying.at(size.number()) + " is one size too many; accepted is " + form + ".", size.number());
    }

    @Nullable
    Measured measured(Role role) {
        return byRole.get(role);
    }

    @Nullable
    Size size(Role role) {
        Measured found = byRole.get(role);
        return found == null ? null : found.length();
    }
}
