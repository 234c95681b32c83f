package setwright.file;

import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.Parallels;
import setwright.shop.ShopRow;
import setwright.shop.Vise;

/** The files of a shop, and which rows are in each. */
enum ShopFile {
    MACHINES("machines.json", Machine.class),
    HOLDERS("holders.json", Holder.class),
    CUTTERS("cutters.json", Cutter.class),
    VISES("vises.json", Vise.class),
    PARALLELS("parallels.json", Parallels.class),
    MATERIALS("materials.json", Material.class),
    CUTTING_SPEEDS("cutting-speeds.json", CuttingSpeed.class),
    FRICTION("friction.json", FrictionPair.class),
    TIMES("times.json", HandTime.class);

    private final String file;
    private final Class<? extends ShopRow> rows;

    ShopFile(String file, Class<? extends ShopRow> rows) {
        this.file = file;
        this.rows = rows;
    }

    String file() {
        return file;
    }

    Class<? extends ShopRow> rows() {
        return rows;
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
