package setwright.geometry;

import java.util.Locale;

/** What a body or a section of the tool is in the set-up; margins differ by it. */
public enum Role {
    TABLE,
    VISE_BODY,
    VISE_BED,
    SOLID_JAW,
    MOVING_JAW,
    VISE_SCREW,
    VISE_HANDLE,
    PARALLEL,
    PACKING,
    STRAP,
    STUD,
    STUD_NUT,
    STEP_BLOCK,
    STOP,
    ANGLE_PLATE,
    FIXTURE,
    /** Of wood fibre: a cutter may run into it. */
    BOARD,
    PART,
    CUTTER,
    SHANK,
    COLLET_NUT,
    HOLDER,
    DRAWBAR,
    SPINDLE_NOSE,
    QUILL,
    HEAD;

    /** In words: {@code solid jaw}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
