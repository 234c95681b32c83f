package setwright.drawing;

import setwright.geometry.Role;

/** How a thing of the set-up is filled and hatched. */
final class Fills {
    private Fills() {}

    static Fill of(Role role) {
        return switch (role) {
            case TABLE -> Fill.TABLE;
            case VISE_BODY, VISE_BED, VISE_SCREW, VISE_HANDLE -> Fill.VISE;
            case SOLID_JAW, MOVING_JAW -> Fill.JAW;
            case PARALLEL, PACKING, BOARD -> Fill.PARALLEL;
            case STRAP, STUD, STUD_NUT, STEP_BLOCK, STOP, ANGLE_PLATE, FIXTURE -> Fill.OTHER_FIXTURE;
            case PART -> Fill.PART;
            case CUTTER -> Fill.CUTTER;
            case SHANK -> Fill.SHANK;
            case COLLET_NUT, HOLDER, DRAWBAR -> Fill.HOLDER;
            case SPINDLE_NOSE -> Fill.NOSE;
            case QUILL, HEAD -> Fill.QUILL;
        };
    }

    static Hatch hatch(Role role) {
        return switch (of(role)) {
            case TABLE, VISE -> Hatch.VISE;
            case JAW -> Hatch.JAW;
            case PARALLEL -> Hatch.PACKING;
            case PART, CUT_AWAY, OPEN -> Hatch.PART;
            case OTHER_FIXTURE, CUTTER, SHANK, HOLDER, NOSE, QUILL -> Hatch.OTHER;
        };
    }
}
