package setwright.caution;

import java.util.List;
import java.util.Map;
import setwright.caution.Cases.Case;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Size;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;
import setwright.shop.Vise;

/** For every check of the grip a job that it fires on and one that it nearly fires on. */
final class GripCases {
    private GripCases() {}

    static List<Case> all() {
        return List.of(
                new Case("nothing-holds-it", StrapCases.lyingOn("80"), StrapCases.lyingOn("200")),
                new Case("slides-in-grip", Cases.snugFacing(660), Cases.snugFacing(420)),
                new Case("lifts-in-grip", Cases.steepHelix(120), Cases.steepHelix(88)),
                new Case("tips-in-grip", Cases.tall(120), Cases.tall(65)),
                new Case("device-slides-on-table", heavyFacing(1500), heavyFacing(600)),
                new Case("grip-too-shallow", shallow("41 mm"), shallow("41.2 mm")),
                new Case("force-off-solid-jaw", weakVise("0.6 kN"), weakVise("3 kN")),
                new Case("one-end-of-jaws", offset(42), offset(40.5)),
                new Case("springs-when-released", thinPlate(GripAsked.HARD), thinPlate(GripAsked.SNUG)),
                new Case("work-springs", longBar("0.018"), longBar("0.021")),
                SpringCases.thinWall(),
                new Case("marks-finished-face", serrated(FaceState.GROUND), serrated(FaceState.SAWN)),
                new Case("cut-skims-the-skin", castTop(1.4), castTop(1.5)));
    }

    /** A deep facing pass of this feed in a vise that is closed hard. */
    static Bench heavyFacing(double mmPerMin) {
        return Cases.block()
                .ink(ViseField.GRIP, GripAsked.HARD)
                .mm("f1-face", OperationField.DEPTH, 3)
                .ink("f1-face", OperationField.FEED, SmallShop.READING.feed(mmPerMin + " mm/min"));
    }

    /** A drilled block on parallels 38.1 high between jaws of this height. */
    static Bench shallow(String jawHeight) {
        Job job = SmallJobs.job(
                "Plate",
                1,
                SmallMaterials.STEEL,
                SmallJobs.block("82", "52", "40"),
                SmallJobs.plain("h1", "10 thru", "10", SmallJobs.middle()));
        return Bench.of(job)
                .in(SmallShop.shop().with(List.of(SmallShop.viseWithJaw(jawHeight))))
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 38.1);
    }

    /** Faced in half lanes in a vise that a usual pull closes with so little. */
    static Bench weakVise(String firm) {
        return Cases.block()
                .in(SmallShop.shop().with(List.of(SmallShop.viseWithFirm(firm))))
                .ink("f1-face", OperationField.CUTTER, SmallCutters.END_MILL)
                .mm("f1-face", OperationField.WIDTH, 10)
                .mm("f1-face", OperationField.DEPTH, 3);
    }

    static Bench offset(double mm) {
        return Cases.block().mm(ViseField.OFFSET, mm);
    }

    /** A plate faced to 7 +/-0.02, gripped over its lowest 5.9 mm. */
    static Bench thinPlate(GripAsked grip) {
        return Bench.of(SmallJobs.job(
                        "Plate", 1, SmallMaterials.STEEL, SmallJobs.block("100", "100", "8"), faced("8", "0.02")))
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 38.1)
                .ink(ViseField.GRIP, grip);
    }

    /** A bar twice as long as the jaws, faced by an end mill. */
    static Bench longBar(String eitherWay) {
        return Bench.of(SmallJobs.job(
                        "Bar", 1, SmallMaterials.STEEL, SmallJobs.block("300", "30", "20"), faced("18", eitherWay)))
                .ink("f1-face", OperationField.CUTTER, SmallCutters.END_MILL);
    }

    static Face faced(String across, String eitherWay) {
        double nominal = Double.parseDouble(across);
        double out = Double.parseDouble(eitherWay);
        Size size = new Size(
                SmallShop.length(across),
                SmallShop.length((nominal - out) + " mm"),
                SmallShop.length((nominal + out) + " mm"));
        return new Face("f1", "face to " + across, Side.TOP, size, null, GotBy.MEASURED);
    }

    /** The back in this state, all else as sawn, in a vise with serrated jaws. */
    static Bench serrated(FaceState back) {
        return Bench.of(SmallJobs.withFaces(SmallJobs.bearingBlock(), Map.of(Side.BACK, back)))
                .in(SmallShop.shop().with(List.of(SmallShop.viseWithFace(Vise.JawFace.SERRATED))));
    }

    /** A cast top, its first pass this deep. */
    static Bench castTop(double mm) {
        return Bench.of(SmallJobs.withFaces(SmallJobs.bearingBlock(), Map.of(Side.TOP, FaceState.CAST)))
                .mm("f1-face", OperationField.DEPTH, mm);
    }
}
