package setwright.file.shape;

import java.util.Locale;
import java.util.Map;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.ViseHolding;
import setwright.shop.CuttingSpeed;
import setwright.shop.Drill;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.Parallels;
import setwright.shop.Reamer;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;
import setwright.shop.Vise;

/** The names of kinds and constants in files; those of kinds stay when a class is renamed. */
public final class WrittenNames {
    private static final Map<Class<?>, String> KINDS = Map.ofEntries(
            Map.entry(Block.class, "block"),
            Map.entry(Face.class, "face"),
            Map.entry(Hole.class, "hole"),
            Map.entry(Pattern.Points.class, "points"),
            Map.entry(Pattern.Grid.class, "grid"),
            Map.entry(ViseHolding.class, "vise"),
            Map.entry(Machine.class, "machine"),
            Map.entry(Holder.class, "holder"),
            Map.entry(EndMill.class, "end-mill"),
            Map.entry(FaceMill.class, "face-mill"),
            Map.entry(SpotDrill.class, "spot-drill"),
            Map.entry(Drill.class, "drill"),
            Map.entry(Reamer.class, "reamer"),
            Map.entry(Tap.class, "tap"),
            Map.entry(Vise.class, "vise"),
            Map.entry(Parallels.class, "parallels"),
            Map.entry(Material.class, "material"),
            Map.entry(CuttingSpeed.class, "cutting-speed"),
            Map.entry(FrictionPair.class, "friction"),
            Map.entry(HandTime.class, "time"));

    private WrittenNames() {}

    /** The written kind of a record of a sealed family. */
    static String kind(Class<?> type) {
        String written = KINDS.get(type);
        if (written == null) {
            throw new IllegalStateException(type + " has no written kind yet; add it to WrittenNames.");
        }
        return written;
    }

    /** A constant in lower case with hyphens: {@code SPINDLE_COLLET} is {@code spindle-collet}. */
    public static String constant(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A class name in lower case with hyphens: {@code EndMill} is {@code end-mill}. */
    static String hyphened(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
