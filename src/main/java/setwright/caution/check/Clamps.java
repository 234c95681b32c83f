package setwright.caution.check;

import java.util.List;
import setwright.geometry.Role;

/** The bodies that hold a part down on the table; what a stud alone stands up into is said of the stud. */
final class Clamps {
    static final List<Role> STRAPS = List.of(Role.STRAP, Role.STUD_NUT, Role.STEP_BLOCK);

    static final List<Role> STOPS = List.of(Role.STOP);

    static final List<Role> AND_STOPS = List.of(Role.STRAP, Role.STUD_NUT, Role.STEP_BLOCK, Role.STOP);

    private Clamps() {}
}
