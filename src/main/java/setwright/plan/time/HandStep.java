package setwright.plan.time;

/** What hands do at the machine, each with the row of the shop that says how long it takes. */
enum HandStep {
    MOUNT_VISE("time-mount-vise"),
    INDICATE_JAW("time-indicate-jaw"),
    FIND_EDGE("time-find-edge"),
    TOUCH_OFF("time-touch-off"),
    FIRST_PART("time-first-part"),
    SET_STOP("time-set-stop"),
    STRAP_FIRST_PART("time-strap-first-part"),
    CUT_SOFT_JAWS("time-cut-soft-jaws"),
    LOAD_IN_VISE("time-load-vise"),
    LOAD_IN_SOFT_JAWS("time-load-soft-jaws"),
    LOAD_UNDER_STRAPS("time-load-straps"),
    LOAD_STUCK("time-load-stuck"),
    LOAD_IN_SANDWICH("time-load-sandwich"),
    LOAD_IN_CHUCK("time-load-chuck"),
    CLEAN_VISE("time-clean-vise"),
    CHANGE_COLLET_TOOL("time-change-collet-tool"),
    CHANGE_DRILL_IN_CHUCK("time-change-drill-in-chuck"),
    CHANGE_HOLDER("time-change-holder"),
    CHANGE_BELT("time-change-belt-speed"),
    CHANGE_VARIABLE_SPEED("time-change-variable-speed"),
    START_PASS("time-start-pass"),
    START_HOLE("time-start-hole"),
    CLEAR_CHIPS("time-clear-chips"),
    MEASURE("time-measure");

    private final String row;

    HandStep(String row) {
        this.row = row;
    }

    /** Id of the row. */
    String row() {
        return row;
    }
}
