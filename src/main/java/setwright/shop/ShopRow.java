package setwright.shop;

/** One thing (or a set counted as one) or one table row that the shop has written down. */
public sealed interface ShopRow permits Owned, Material, CuttingSpeed, FrictionPair, JointSpring, HandTime, TapTest {

    /** A slug that never changes its meaning, for instance {@code end-mill-hss-10x22-shank10}. */
    String id();

    /** As the shop calls it. */
    String name();

    /** The document that the numbers come from, or {@code from memory ...}, {@code common practice ...}. */
    String source();

    Kind kind();

    /** The kinds of row; each has its file in the shop folder. */
    enum Kind {
        MACHINE,
        HOLDER,
        CUTTER,
        VISE,
        PARALLELS,
        STRAP,
        EDGE_CLAMP,
        STUD,
        NUT,
        WASHER,
        STEP_BLOCKS,
        T_NUT,
        STOP,
        ANGLE_PLATE,
        SET_UP_BLOCKS,
        V_BLOCKS,
        ANGLE_BLOCKS,
        ROTARY_TABLE,
        DIVIDING_HEAD,
        COLLET_BLOCK,
        MAGNETIC_CHUCK,
        FIXTURE_PLATE,
        SOFT_JAWS,
        VEE_JAWS,
        ADHESIVE,
        WORK_CHUCK,
        TAILSTOCK,
        MANDREL,
        JACK,
        MATERIAL,
        CUTTING_SPEED,
        FRICTION,
        JOINT_SPRING,
        TIME,
        TAP_TEST
    }
}
