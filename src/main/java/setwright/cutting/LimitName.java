package setwright.cutting;

/** What can bind a choice of depth, width, feed, speed or stick-out. */
public enum LimitName {
    CUTTING_EDGE("cutting edge"),
    CHIP_LOAD("chip load"),
    THIN_CHIP("thin chip"),
    SPINDLE_POWER("spindle power"),
    SPINDLE_TORQUE("spindle torque"),
    BELT("belt"),
    TOOL_SPRING("tool spring"),
    TOOL_BREAKAGE("tool breakage"),
    SHANK_GRIP("shank grip"),
    SHANK_PULL_OUT("shank pull-out"),
    WORK_GRIP("work grip"),
    WORK_SPRING("work spring"),
    CHATTER("chatter"),
    FINISH("finish"),
    FEED_RANGE("feed range"),
    OVERSPEED("overspeed");

    private final String words;

    LimitName(String words) {
        this.words = words;
    }

    /** As printed. */
    public String words() {
        return words;
    }
}
