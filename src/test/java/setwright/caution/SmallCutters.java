package setwright.caution;

import static setwright.caution.SmallShop.READING;
import static setwright.caution.SmallShop.length;

import java.util.List;
import setwright.shop.Cutter;
import setwright.shop.Drill;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.Kept;
import setwright.shop.Reamer;
import setwright.shop.ShankForm;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;
import setwright.shop.ToolMaterial;

/** What the small shop cuts with; lengths from memory of the usual standards. */
final class SmallCutters {
    static final String FACE_MILL = "face-mill-carbide-63";
    static final String END_MILL = "end-mill-hss-20x38-shank20";
    static final String LONG_END_MILL = "end-mill-hss-20x75-shank20";
    static final String PLAIN_END_MILL = "end-mill-carbide-20x38-shank20";
    static final String CARBIDE_END_MILL = "end-mill-carbide-12x26-shank12";
    static final String SPOT = "spot-drill-hss-90deg-12";
    static final String STUB_6_8 = "drill-hss-stub-6.8";
    static final String REAMER = "reamer-hss-12-h7";
    static final String SPIRAL_POINT = "tap-hss-m8-spiral-point";
    static final String SPIRAL_FLUTE = "tap-hss-m8-spiral-flute";
    static final String STRAIGHT = "tap-hss-m8-straight";

    private SmallCutters() {}

    static List<Cutter> all() {
        return List.of(
                faceMill(),
                endMill(END_MILL, "End mill 20 mm, 4 flutes, 38 long", ToolMaterial.HSS, "20 mm", "38 mm", "104 mm"),
                endMill(
                        LONG_END_MILL,
                        "Long end mill 20 mm, 4 flutes, 75 long",
                        ToolMaterial.HSS,
                        "20 mm",
                        "75 mm",
                        "141 mm"),
                endMill(
                        PLAIN_END_MILL,
                        "Carbide end mill 20 mm, 4 flutes, 38 long",
                        ToolMaterial.CARBIDE,
                        "20 mm",
                        "38 mm",
                        "104 mm"),
                endMill(
                        CARBIDE_END_MILL,
                        "Carbide end mill 12 mm, 4 flutes, 26 long",
                        ToolMaterial.CARBIDE,
                        "12 mm",
                        "26 mm",
                        "83 mm"),
                spotDrill(),
                jobber("5.0", "52 mm", "86 mm"),
                jobber("6.6", "63 mm", "101 mm"),
                jobber("6.8", "69 mm", "109 mm"),
                jobber("10.0", "87 mm", "133 mm"),
                jobber("11.8", "94 mm", "142 mm"),
                drill(STUB_6_8, "Drill 6.8 mm, stub", Drill.Series.STUB, "6.8 mm", "34 mm", "74 mm"),
                reamer(),
                tap("6", "spiral point", Tap.Flute.SPIRAL_POINT, 4, "6 mm", "19 mm", "80 mm"),
                tap("8", "spiral point", Tap.Flute.SPIRAL_POINT, 4, "8 mm", "22 mm", "90 mm"),
                tap("8", "spiral flutes", Tap.Flute.SPIRAL_FLUTE, 3, "8 mm", "22 mm", "90 mm"),
                tap("8", "straight flutes", Tap.Flute.STRAIGHT, 4, "8 mm", "22 mm", "90 mm"));
    }

    private static FaceMill faceMill() {
        return new FaceMill(
                FACE_MILL,
                "Face mill 63 mm, 5 inserts",
                ToolMaterial.CARBIDE,
                length("63 mm"),
                length("22 mm"),
                ShankForm.PLAIN,
                length("9 mm"),
                length("40 mm"),
                5,
                READING.angle("0 deg"),
                length("40 mm"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** @param sizes diameter and shank, flute length, overall length */
    private static EndMill endMill(String id, String name, ToolMaterial material, String... sizes) {
        return new EndMill(
                id,
                name,
                material,
                length(sizes[0]),
                length(sizes[0]),
                material == ToolMaterial.HSS ? ShankForm.FLATTED : ShankForm.PLAIN,
                length(sizes[1]),
                length(sizes[2]),
                4,
                READING.angle("30 deg"),
                false,
                null,
                null,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** The same end mill with another helix. */
    static EndMill withHelix(EndMill mill, String helix) {
        return new EndMill(
                mill.id(),
                mill.name(),
                mill.material(),
                mill.diameter(),
                mill.shank(),
                mill.shankForm(),
                mill.fluteLength(),
                mill.overallLength(),
                mill.teeth(),
                READING.angle(helix),
                mill.centreCutting(),
                mill.cornerRadius(),
                mill.wave(),
                mill.kept(),
                mill.source());
    }

    /** The same drill, so many of them counted. */
    static Drill owned(Drill drill, int count) {
        return new Drill(
                drill.id(),
                drill.name(),
                drill.material(),
                drill.diameter(),
                drill.shank(),
                drill.shankForm(),
                drill.fluteLength(),
                drill.overallLength(),
                drill.teeth(),
                drill.pointAngle(),
                drill.series(),
                new Kept("counted", count),
                drill.source());
    }

    private static SpotDrill spotDrill() {
        return new SpotDrill(
                SPOT,
                "Spot drill 12 mm, 90 degrees",
                ToolMaterial.HSS,
                length("12 mm"),
                length("12 mm"),
                ShankForm.PLAIN,
                length("51 mm"),
                length("102 mm"),
                2,
                READING.angle("90 deg"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    private static Drill jobber(String size, String flutes, String overall) {
        return drill(
                "drill-hss-jobber-" + size,
                "Drill " + size + " mm, jobber",
                Drill.Series.JOBBER,
                size + " mm",
                flutes,
                overall);
    }

    /** @param sizes diameter and shank, flute length, overall length */
    private static Drill drill(String id, String name, Drill.Series series, String... sizes) {
        return new Drill(
                id,
                name,
                ToolMaterial.HSS,
                length(sizes[0]),
                length(sizes[0]),
                ShankForm.PLAIN,
                length(sizes[1]),
                length(sizes[2]),
                2,
                READING.angle("118 deg"),
                series,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    private static Reamer reamer() {
        return new Reamer(
                REAMER,
                "Reamer 12 H7",
                ToolMaterial.HSS,
                length("12 mm"),
                length("10 mm"),
                ShankForm.PLAIN,
                length("44 mm"),
                length("151 mm"),
                8,
                "H7",
                length("1.5 mm"),
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }

    /** @param sizes shank, flute length, overall length */
    private static Tap tap(String size, String flutes, Tap.Flute flute, int lead, String... sizes) {
        return new Tap(
                "tap-hss-m" + size + "-" + flutes.replace(" flutes", "").replace(' ', '-')
                        + (flute == Tap.Flute.SPIRAL_FLUTE ? "-flute" : ""),
                "Tap M" + size + ", " + flutes,
                ToolMaterial.HSS,
                length(size + " mm"),
                length(sizes[0]),
                ShankForm.PLAIN,
                length(sizes[1]),
                length(sizes[2]),
                3,
                "M" + size,
                flute,
                lead,
                SmallShop.KEPT,
                SmallShop.SOURCE);
    }
}
