package setwright.file;

import setwright.shop.Adhesive;
import setwright.shop.AngleBlocks;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.DividingHead;
import setwright.shop.EdgeClamp;
import setwright.shop.FixturePlate;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Jack;
import setwright.shop.JointSpring;
import setwright.shop.Machine;
import setwright.shop.MagneticChuck;
import setwright.shop.Mandrel;
import setwright.shop.Material;
import setwright.shop.Nut;
import setwright.shop.Parallels;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.ShopRow;
import setwright.shop.SoftJaws;
import setwright.shop.StepBlocks;
import setwright.shop.Stop;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.TNut;
import setwright.shop.Tailstock;
import setwright.shop.TapTest;
import setwright.shop.VBlocks;
import setwright.shop.VeeJaws;
import setwright.shop.Vise;
import setwright.shop.Washer;
import setwright.shop.WorkChuck;

/** The files of a shop, and which rows are in each. */
enum ShopFile {
    MACHINES("machines.json", Machine.class),
    HOLDERS("holders.json", Holder.class),
    CUTTERS("cutters.json", Cutter.class),
    VISES("vises.json", Vise.class),
    PARALLELS("parallels.json", Parallels.class),
    STRAPS("straps.json", Strap.class, false),
    EDGE_CLAMPS("edge-clamps.json", EdgeClamp.class, false),
    STUDS("studs.json", Stud.class, false),
    NUTS("nuts.json", Nut.class, false),
    WASHERS("washers.json", Washer.class, false),
    STEP_BLOCKS("step-blocks.json", StepBlocks.class, false),
    T_NUTS("t-nuts.json", TNut.class, false),
    STOPS("stops.json", Stop.class, false),
    ANGLE_PLATES("angle-plates.json", AnglePlate.class, false),
    SET_UP_BLOCKS("set-up-blocks.json", SetUpBlocks.class, false),
    V_BLOCKS("v-blocks.json", VBlocks.class, false),
    ANGLE_BLOCKS("angle-blocks.json", AngleBlocks.class, false),
    ROTARY_TABLES("rotary-tables.json", RotaryTable.class, false),
    DIVIDING_HEADS("dividing-heads.json", DividingHead.class, false),
    COLLET_BLOCKS("collet-blocks.json", ColletBlock.class, false),
    MAGNETIC_CHUCKS("magnetic-chucks.json", MagneticChuck.class, false),
    FIXTURE_PLATES("fixture-plates.json", FixturePlate.class, false),
    SOFT_JAWS("soft-jaws.json", SoftJaws.class, false),
    VEE_JAWS("vee-jaws.json", VeeJaws.class, false),
    ADHESIVES("adhesives.json", Adhesive.class, false),
    WORK_CHUCKS("work-chucks.json", WorkChuck.class, false),
    TAILSTOCKS("tailstocks.json", Tailstock.class, false),
    MANDRELS("mandrels.json", Mandrel.class, false),
    JACKS("jacks.json", Jack.class, false),
    MATERIALS("materials.json", Material.class),
    CUTTING_SPEEDS("cutting-speeds.json", CuttingSpeed.class),
    FRICTION("friction.json", FrictionPair.class),
    JOINT_SPRINGS("joint-springs.json", JointSpring.class, false),
    TIMES("times.json", HandTime.class),
    TAP_TESTS("tap-tests.json", TapTest.class, false);

    private final String file;
    private final Class<? extends ShopRow> rows;
    private final boolean needed;

    ShopFile(String file, Class<? extends ShopRow> rows) {
        this(file, rows, true);
    }

    ShopFile(String file, Class<? extends ShopRow> rows, boolean needed) {
        this.file = file;
        this.rows = rows;
        this.needed = needed;
    }

    String file() {
        return file;
    }

    Class<? extends ShopRow> rows() {
        return rows;
    }

    /** Whether every shop has this file; one that owns nothing of a kind may leave the others out. */
    boolean needed() {
        return needed;
    }

    /** Which file a path begins with; after the last for none. */
    static int indexOf(String path) {
        for (ShopFile each : values()) {
            if (path.startsWith(each.file)) {
                return each.ordinal();
            }
        }
        return values().length;
    }
}
