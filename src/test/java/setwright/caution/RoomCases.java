package setwright.caution;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.job.ViseHolding.JawSeat;
import setwright.shop.SlittingSaw;
import setwright.shop.ToolMaterial;

/** Jobs in which something touches or does not fit, and their neighbours in which it nearly does. */
final class RoomCases {
    private RoomCases() {}

    /** The bearing block on its parallels, this high: the tap goes its lead of four threads and one pitch through, 6.25. */
    static Bench parallelsHigh(double mm) {
        return Cases.block().mm(ViseField.PARALLEL_HEIGHT, mm);
    }

    static Bench onTheBed() {
        return Cases.block().ink(ViseField.PARALLELS, ViseHolding.NONE);
    }

    /** A thin plate on parallels nearly as high as the jaws, faced down to this thickness over longer parallels. */
    static Bench plateFacedTo(String mm) {
        Job plate = SmallJobs.job(
                "Plate",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "3"),
                new Face("f1", "face to " + mm, Side.TOP, Size.of(SmallShop.length(mm + " mm")), null, GotBy.MEASURED));
        return Bench.of(plate)
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 42);
    }

    /** A block of 20 on parallels of this height, faced to 19 over jaws of 44. */
    static Bench lowBlock(double parallels) {
        Job low = SmallJobs.job(
                "Low block", 1, SmallMaterials.STEEL, SmallJobs.block("82", "52", "20"), SmallJobs.face("f1", "19"));
        return Bench.of(low)
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, parallels);
    }

    /** A foot of 29 drilled 10 through by a drill in a collet at the nose: point 5 / tan 59 = 3.0 and 1 below. */
    static Bench drillInCollet(double stickOut) {
        return Bench.of(SmallJobs.foot())
                .ink("h1-drill", OperationField.HOLDER, "collet-r8-10mm")
                .mm("h1-drill", OperationField.STICK_OUT, stickOut);
    }

    /** A block that is faced down to 38 in one pass by an end mill with 38 of flutes. */
    static Bench facedInOnePass(String height) {
        double allowance = Double.parseDouble(height) - 38;
        Job high = SmallJobs.job(
                "High block",
                1,
                SmallMaterials.ALUMINIUM,
                SmallJobs.block("82", "18", height),
                SmallJobs.face("f1", "38"));
        return Bench.of(high)
                .ink("f1-face", OperationField.CUTTER, SmallCutters.END_MILL)
                .ink("f1-face", OperationField.HOLDER, "collet-r8-20mm")
                .mm("f1-face", OperationField.DEPTH, allowance);
    }

    /** A bar of this length along the table, off the middle of the jaws, faced by a cutter of 63. */
    static Bench bar(String length, double offset) {
        Job bar = SmallJobs.job(
                "Bar", 1, SmallMaterials.ALUMINIUM, SmallJobs.block(length, "52", "40"), SmallJobs.face("f1", "38"));
        return Bench.of(bar).mm(ViseField.OFFSET, offset);
    }

    /** A slit this deep into the right end, by a saw of 80 on an arbor of 40: (80 - 40) / 2 - 1 = 19 at most. */
    static Bench slit(String depth) {
        Job slit = SmallJobs.job(
                "Clamp block",
                1,
                SmallMaterials.ALUMINIUM,
                SmallJobs.block("82", "52", "40"),
                new Slit(
                        "c1",
                        "slit 2 wide x " + depth + " deep, right end",
                        Side.RIGHT,
                        Size.of(SmallShop.length("2 mm")),
                        Size.of(SmallShop.length(depth + " mm")),
                        null,
                        new Placed(Pattern.Datum.CENTRE, SmallShop.length("0 mm"), SmallShop.length("10 mm"), null),
                        null,
                        GotBy.TOOL));
        return Bench.of(slit)
                .in(SmallShop.shop().with(List.of(saw("80"), saw("100"), SmallHolders.stubArbor())))
                .ink("c1-saw", OperationField.CUTTER, "saw-80");
    }

    private static SlittingSaw saw(String diameter) {
        return new SlittingSaw(
                "saw-" + diameter,
                "Slitting saw " + diameter + " x 2 mm",
                ToolMaterial.HSS,
                SmallShop.length(diameter + " mm"),
                SmallShop.length("22 mm"),
                SmallShop.length("2 mm"),
                40,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** A block that is so wide across the jaws of a vise that opens 150 inboard. */
    static Bench wide(String across) {
        Job wide = SmallJobs.job(
                "Wide block",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("152", across, "40"),
                SmallJobs.face("f1", "38"));
        return Bench.of(wide).ink(ViseField.SEAT, JawSeat.INBOARD);
    }

    static List<Cases.Case> all() {
        return List.of(
                new Cases.Case("drill-meets-parallel", Cases.thickParallels(2), Cases.thickParallels(0)),
                new Cases.Case("drill-meets-vise-bed", parallelsHigh(6.6), parallelsHigh(6.8)),
                new Cases.Case("cutter-meets-packing", plateFacedTo("0.4"), plateFacedTo("0.6")),
                new Cases.Case("cutter-meets-jaw", lowBlock(25.3), lowBlock(25.6)),
                StrapCases.cutterMeetsClamp(),
                StrapCases.cutterMeetsStop(),
                new Cases.Case("holder-meets-jaw", Cases.stubDrillOut(34), Cases.stubDrillOut(38)),
                StrapCases.holderMeetsClamp(),
                new Cases.Case("holder-meets-work", Cases.drillOut(40), Cases.drillOut(42.2)),
                new Cases.Case("nose-meets-work", drillInCollet(32), drillInCollet(36)),
                new Cases.Case("arbor-flange-meets-work", slit("19.2"), slit("18.9")),
                new Cases.Case("shank-rubs", facedInOnePass("76.5"), facedInOnePass("75.5")),
                new Cases.Case("no-room-to-change-tool", Cases.lowHead(318), Cases.lowHead(320)),
                new Cases.Case("quill-runs-out", Cases.reamFrom(315), Cases.reamFrom(310)),
                new Cases.Case("knee-runs-out", Cases.lowHead(340), Cases.lowHead(352)),
                new Cases.Case("travel-too-short", bar("750", 25), bar("750", 20)),
                new Cases.Case("hangs-off-the-table", bar("1200", 60), bar("1200", 20)),
                new Cases.Case("opening-too-small", wide("149.5"), wide("149")));
    }
}
