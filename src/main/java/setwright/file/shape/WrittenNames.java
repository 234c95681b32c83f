package setwright.file.shape;

import java.util.Locale;
import java.util.Map;
import setwright.job.ArcSlot;
import setwright.job.Block;
import setwright.job.Chamfer;
import setwright.job.DeviceHolding;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Flats;
import setwright.job.Hole;
import setwright.job.InclinedFace;
import setwright.job.Keyseat;
import setwright.job.OutlineBlank;
import setwright.job.Pattern;
import setwright.job.Plate;
import setwright.job.Pocket;
import setwright.job.ProfileBar;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.RoughBody;
import setwright.job.RoundBar;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.TableHolding;
import setwright.job.Tube;
import setwright.job.UndecidedHolding;
import setwright.job.ViseHolding;
import setwright.job.WoodruffSeat;
import setwright.shop.Adhesive;
import setwright.shop.AngleBlocks;
import setwright.shop.AnglePlate;
import setwright.shop.BoringBar;
import setwright.shop.CentreDrill;
import setwright.shop.ChamferMill;
import setwright.shop.ColletBlock;
import setwright.shop.CornerRounder;
import setwright.shop.Counterbore;
import setwright.shop.Countersink;
import setwright.shop.CuttingSpeed;
import setwright.shop.DividingHead;
import setwright.shop.DovetailCutter;
import setwright.shop.Drill;
import setwright.shop.EdgeClamp;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.FixturePlate;
import setwright.shop.FlyCutter;
import setwright.shop.FormCutter;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Jack;
import setwright.shop.JointSpring;
import setwright.shop.KeyseatCutter;
import setwright.shop.Machine;
import setwright.shop.MagneticChuck;
import setwright.shop.Mandrel;
import setwright.shop.Material;
import setwright.shop.Nut;
import setwright.shop.Parallels;
import setwright.shop.Reamer;
import setwright.shop.RotaryTable;
import setwright.shop.Scriber;
import setwright.shop.SetUpBlocks;
import setwright.shop.ShellMill;
import setwright.shop.SlittingSaw;
import setwright.shop.SoftJaws;
import setwright.shop.SpotDrill;
import setwright.shop.StepBlocks;
import setwright.shop.Stop;
import setwright.shop.Strap;
import setwright.shop.Stud;
import setwright.shop.TNut;
import setwright.shop.TSlotCutter;
import setwright.shop.Tailstock;
import setwright.shop.Tap;
import setwright.shop.TapTest;
import setwright.shop.VBlocks;
import setwright.shop.VeeJaws;
import setwright.shop.Vise;
import setwright.shop.Washer;
import setwright.shop.WorkChuck;

/** The names of kinds and constants in files; those of kinds stay when a class is renamed. */
public final class WrittenNames {
    private static final Map<Class<?>, String> KINDS = Map.ofEntries(
            Map.entry(Block.class, "block"),
            Map.entry(Face.class, "face"),
            Map.entry(Hole.class, "hole"),
            Map.entry(Pattern.Points.class, "points"),
            Map.entry(Pattern.Grid.class, "grid"),
            Map.entry(ViseHolding.class, "vise"),
            Map.entry(Plate.class, "plate"),
            Map.entry(RoundBar.class, "round-bar"),
            Map.entry(Tube.class, "tube"),
            Map.entry(ProfileBar.class, "profile-bar"),
            Map.entry(OutlineBlank.class, "outline"),
            Map.entry(RoughBody.class, "rough-body"),
            Map.entry(Step.class, "step"),
            Map.entry(Slot.class, "slot"),
            Map.entry(ArcSlot.class, "arc-slot"),
            Map.entry(RadiusEnd.class, "radius-end"),
            Map.entry(Pocket.class, "pocket"),
            Map.entry(ProfileCut.class, "profile"),
            Map.entry(Keyseat.class, "keyseat"),
            Map.entry(WoodruffSeat.class, "woodruff-seat"),
            Map.entry(TSlot.class, "t-slot"),
            Map.entry(Dovetail.class, "dovetail"),
            Map.entry(Flats.class, "flats"),
            Map.entry(Chamfer.class, "chamfer"),
            Map.entry(Slit.class, "slit"),
            Map.entry(InclinedFace.class, "inclined-face"),
            Map.entry(Divided.class, "divided"),
            Map.entry(Pattern.Line.class, "line"),
            Map.entry(Pattern.BoltCircle.class, "bolt-circle"),
            Map.entry(UndecidedHolding.class, "undecided"),
            Map.entry(TableHolding.class, "table"),
            Map.entry(DeviceHolding.class, "device"),
            Map.entry(Machine.class, "machine"),
            Map.entry(Holder.class, "holder"),
            Map.entry(EndMill.class, "end-mill"),
            Map.entry(FaceMill.class, "face-mill"),
            Map.entry(SpotDrill.class, "spot-drill"),
            Map.entry(Drill.class, "drill"),
            Map.entry(Reamer.class, "reamer"),
            Map.entry(Tap.class, "tap"),
            Map.entry(CentreDrill.class, "centre-drill"),
            Map.entry(Countersink.class, "countersink"),
            Map.entry(Counterbore.class, "counterbore"),
            Map.entry(FlyCutter.class, "fly-cutter"),
            Map.entry(ShellMill.class, "shell-mill"),
            Map.entry(BoringBar.class, "boring-bar"),
            Map.entry(SlittingSaw.class, "slitting-saw"),
            Map.entry(KeyseatCutter.class, "keyseat-cutter"),
            Map.entry(TSlotCutter.class, "t-slot-cutter"),
            Map.entry(DovetailCutter.class, "dovetail-cutter"),
            Map.entry(ChamferMill.class, "chamfer-mill"),
            Map.entry(CornerRounder.class, "corner-rounder"),
            Map.entry(FormCutter.class, "form-cutter"),
            Map.entry(Scriber.class, "scriber"),
            Map.entry(Vise.class, "vise"),
            Map.entry(Parallels.class, "parallels"),
            Map.entry(Strap.class, "strap"),
            Map.entry(EdgeClamp.class, "edge-clamp"),
            Map.entry(Stud.class, "stud"),
            Map.entry(Nut.class, "nut"),
            Map.entry(Washer.class, "washer"),
            Map.entry(StepBlocks.class, "step-blocks"),
            Map.entry(TNut.class, "t-nut"),
            Map.entry(Stop.class, "stop"),
            Map.entry(AnglePlate.class, "angle-plate"),
            Map.entry(SetUpBlocks.class, "set-up-blocks"),
            Map.entry(VBlocks.class, "v-blocks"),
            Map.entry(AngleBlocks.class, "angle-blocks"),
            Map.entry(RotaryTable.class, "rotary-table"),
            Map.entry(DividingHead.class, "dividing-head"),
            Map.entry(ColletBlock.class, "collet-block"),
            Map.entry(MagneticChuck.class, "magnetic-chuck"),
            Map.entry(FixturePlate.class, "fixture-plate"),
            Map.entry(SoftJaws.class, "soft-jaws"),
            Map.entry(VeeJaws.class, "vee-jaws"),
            Map.entry(Adhesive.class, "adhesive"),
            Map.entry(WorkChuck.class, "work-chuck"),
            Map.entry(Tailstock.class, "tailstock"),
            Map.entry(Mandrel.class, "mandrel"),
            Map.entry(Jack.class, "jack"),
            Map.entry(Material.class, "material"),
            Map.entry(CuttingSpeed.class, "cutting-speed"),
            Map.entry(FrictionPair.class, "friction"),
            Map.entry(JointSpring.class, "joint-spring"),
            Map.entry(HandTime.class, "time"),
            Map.entry(TapTest.class, "tap-test"));

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
