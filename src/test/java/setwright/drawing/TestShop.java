package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Axis;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Drill;
import setwright.shop.FaceMill;
import setwright.shop.FrictionPair;
import setwright.shop.Holder;
import setwright.shop.IsoGroup;
import setwright.shop.Kept;
import setwright.shop.Machine;
import setwright.shop.MachineTable;
import setwright.shop.Material;
import setwright.shop.Parallels;
import setwright.shop.Reamer;
import setwright.shop.ShankForm;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.SpotDrill;
import setwright.shop.StiffnessBand;
import setwright.shop.Tap;
import setwright.shop.Taper;
import setwright.shop.ToolMaterial;
import setwright.shop.Vise;

/** A small shop for looking at drawings and sheets; its sizes are ordinary ones (common practice). */
final class TestShop {
    static final String KNEE_MILL = "knee-mill-r8-9x49";
    static final String READOUT_MILL = "readout-mill-r8";

    private static final String SOURCE = "common practice";
    private static final Reading READ = new Reading(UnitSystem.METRIC);

    private TestShop() {}

    static Shop shop() {
        List<ShopRow> rows = new ArrayList<>();
        rows.add(machine(KNEE_MILL, "Knee mill R8, 9 x 49 in", Axis.ReadBy.DIAL));
        rows.add(machine(READOUT_MILL, "Knee mill R8 with readout", Axis.ReadBy.READOUT));
        rows.addAll(holders());
        rows.addAll(cutters());
        rows.add(vise());
        rows.add(parallels("parallels-0.125in", "Parallels 1/8 in, 10 pairs", "1/8 in"));
        rows.add(parallels("parallels-0.500in", "Parallels 1/2 in, 4 pairs", "1/2 in"));
        rows.add(material());
        rows.addAll(speeds());
        rows.addAll(friction());
        return Shop.of(rows);
    }

    private static Machine machine(String id, String name, Axis.ReadBy read) {
        return new Machine(
                id,
                name,
                Taper.R8,
                List.of("80", "135", "210", "325", "660", "1115", "1750", "2720").stream()
                        .map(READ::spindleSpeed)
                        .toList(),
                null,
                null,
                READ.power("2 hp"),
                READ.ratio("0.75"),
                mm("0 in"),
                mm("18.5 in"),
                mm("1-7/8 in"),
                mm("5 in"),
                mm("3.375 in"),
                List.of(mm("0.0015 in"), mm("0.003 in"), mm("0.006 in")),
                mm("3/8 in"),
                axis("34 in", read, "0.200 in"),
                axis("12 in", read, "0.200 in"),
                axis("16 in", Axis.ReadBy.DIAL, "0.100 in"),
                new MachineTable(mm("49 in"), mm("9 in"), 3, mm("5/8 in"), mm("2.5 in")),
                mm("12 in"),
                new StiffnessBand(READ.stiffness("5 N/um"), READ.stiffness("10 N/um"), READ.stiffness("20 N/um")),
                null,
                null,
                null,
                null,
                null,
                kept("north wall, under the window"),
                SOURCE);
    }

    private static Axis axis(String travel, Axis.ReadBy read, String perTurn) {
        return new Axis(
                mm(travel),
                read,
                mm(perTurn),
                mm("0.001 in"),
                mm("0.005 in"),
                READ.feed("0.5 in/min"),
                READ.feed("30 in/min"));
    }

    private static List<Holder> holders() {
        return List.of(
                holder(
                        "face-mill-arbor-22-r8",
                        "Face mill arbor 22 mm, R8",
                        Holder.Style.FACE_MILL_ARBOR,
                        "25",
                        "45",
                        "22",
                        "22",
                        "19"),
                holder(
                        "drill-chuck-keyed-13-r8",
                        "Keyed drill chuck 13 mm on an R8 arbor",
                        Holder.Style.DRILL_CHUCK_KEYED,
                        "115",
                        "50",
                        "1",
                        "13",
                        "25"),
                holder(
                        "collet-chuck-er32-r8",
                        "ER32 collet chuck, R8",
                        Holder.Style.COLLET_CHUCK,
                        "57",
                        "50",
                        "2",
                        "20",
                        "27"));
    }

    private static Holder holder(
            String id,
            String name,
            Holder.Style style,
            String out,
            String nose,
            String least,
            String most,
            String grip) {
        return new Holder(
                id,
                name,
                style,
                Taper.R8,
                mm(out),
                mm(nose),
                mm(least),
                mm(most),
                mm(grip),
                mm("0.01"),
                mm("0.03"),
                mm("102"),
                null,
                false,
                kept("holder board, knee mill"),
                SOURCE);
    }

    private static List<Cutter> cutters() {
        return List.of(
                new FaceMill(
                        "face-mill-carbide-63",
                        "Face mill 63 mm, 5 inserts",
                        ToolMaterial.CARBIDE,
                        mm("63"),
                        mm("22"),
                        ShankForm.PLAIN,
                        mm("9"),
                        mm("40"),
                        5,
                        READ.angle("0 deg"),
                        mm("40"),
                        kept("drawer 5, carbide"),
                        SOURCE),
                new SpotDrill(
                        "spot-drill-hss-90deg-12",
                        "Spot drill 12 mm, 90 degrees",
                        ToolMaterial.HSS,
                        mm("12"),
                        mm("12"),
                        ShankForm.PLAIN,
                        mm("51"),
                        mm("102"),
                        2,
                        READ.angle("90 deg"),
                        kept("drill cabinet, spot drills"),
                        SOURCE),
                drill("6.8", "69", "109"),
                drill("11.7", "94", "142"),
                new Reamer(
                        "reamer-hss-12-h7",
                        "Reamer 12 H7",
                        ToolMaterial.HSS,
                        mm("12"),
                        mm("10"),
                        ShankForm.PLAIN,
                        mm("44"),
                        mm("151"),
                        8,
                        "H7",
                        mm("1.5"),
                        kept("drawer 7, reamers"),
                        SOURCE),
                new Tap(
                        "tap-hss-m8-spiral-point",
                        "Tap M8, spiral point",
                        ToolMaterial.HSS,
                        mm("8"),
                        mm("8"),
                        ShankForm.PLAIN,
                        mm("22"),
                        mm("90"),
                        3,
                        "M8",
                        Tap.Flute.SPIRAL_POINT,
                        4,
                        kept("drawer 8, taps"),
                        SOURCE));
    }

    private static Drill drill(String size, String flutes, String overall) {
        return new Drill(
                "drill-hss-jobber-" + size,
                "Drill " + size + " mm, jobber",
                ToolMaterial.HSS,
                mm(size),
                mm(size),
                ShankForm.PLAIN,
                mm(flutes),
                mm(overall),
                2,
                READ.angle("118 deg"),
                Drill.Series.JOBBER,
                kept("drill cabinet, metric"),
                SOURCE);
    }

    private static Vise vise() {
        return new Vise(
                "vise-6in",
                "6 in vise",
                mm("152"),
                mm("44"),
                mm("16"),
                mm("73"),
                mm("200"),
                mm("300"),
                mm("430"),
                Vise.JawFace.SMOOTH,
                READ.force("5 kN"),
                READ.force("15 kN"),
                READ.force("25 kN"),
                READ.mass("40 kg"),
                kept("on the knee mill"),
                SOURCE);
    }

    private static Parallels parallels(String id, String name, String thick) {
        return new Parallels(
                id,
                name,
                mm(thick),
                mm("6 in"),
                List.of(mm("1/2 in"), mm("3/4 in"), mm("1 in"), mm("1-1/4 in"), mm("1-1/2 in")),
                kept("parallel box, knee mill"),
                SOURCE);
    }

    private static Material material() {
        return new Material(
                "mild-steel",
                "Mild steel",
                List.of("1018"),
                IsoGroup.P,
                READ.stress("1350 N/mm2"),
                READ.ratio("0.21"),
                READ.ratio("24000"),
                null,
                READ.stress("2300 N/mm2"),
                READ.density("7850 kg/m3"),
                READ.stress("207 GPa"),
                READ.ratio("0.0000115"),
                null,
                null,
                SOURCE);
    }

    private static List<CuttingSpeed> speeds() {
        return List.of(
                speed(Cutter.Form.FACE_MILL, ToolMaterial.CARBIDE, "100 m/min", "0.1"),
                speed(Cutter.Form.SPOT_DRILL, ToolMaterial.HSS, "24 m/min", "0.05"),
                speed(Cutter.Form.DRILL, ToolMaterial.HSS, "24 m/min", "0.12"),
                speed(Cutter.Form.REAMER, ToolMaterial.HSS, "12 m/min", "0.3"),
                speed(Cutter.Form.TAP, ToolMaterial.HSS, "9 m/min", "1.25"));
    }

    private static CuttingSpeed speed(Cutter.Form form, ToolMaterial tool, String speed, String feed) {
        return new CuttingSpeed(
                "speed-mild-steel-" + form.ordinal(),
                "Mild steel, " + form,
                "mild-steel",
                form,
                tool,
                READ.cuttingSpeed(speed),
                READ.cuttingSpeed(speed),
                List.of(new CuttingSpeed.FeedAt(mm("10"), mm(feed))),
                null,
                SOURCE);
    }

    private static List<FrictionPair> friction() {
        return List.of(
                friction("friction-smooth-jaw-steel", "0.10", "0.15", "0.16"),
                friction("friction-steel-on-steel", "0.12", "0.15", "0.25"));
    }

    private static FrictionPair friction(String id, String low, String expected, String high) {
        return new FrictionPair(id, id, READ.ratio(low), READ.ratio(expected), READ.ratio(high), SOURCE);
    }

    private static Kept kept(String place) {
        return new Kept(place, 1);
    }

    private static Typed<Length> mm(String text) {
        return READ.length(Measure.LENGTH, text);
    }
}
