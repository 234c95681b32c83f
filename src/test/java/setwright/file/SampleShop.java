package setwright.file;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Axis;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Drill;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.IsoGroup;
import setwright.shop.JointSpring;
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
import setwright.shop.TiltBand;
import setwright.shop.ToolMaterial;
import setwright.shop.Vise;

/** One row of every kind, enough for the bearing block; the numbers are round and from no document. */
final class SampleShop {
    private static final Reading READING = new Reading(UnitSystem.METRIC);
    private static final String SOURCE = "common practice: sample";

    private SampleShop() {}

    static Shop shop() {
        return Shop.of(List.of(
                machine(),
                collet(),
                chuck(),
                endMill(),
                faceMill(),
                spotDrill(),
                drill("drill-6.8", "6.8 mm"),
                drill("drill-11.8", "11.8 mm"),
                reamer(),
                tap(),
                vise(),
                parallels(),
                mildSteel(),
                cuttingSpeed(),
                friction(),
                jointSpring(),
                time()));
    }

    static Machine machine() {
        Axis x = new Axis(
                mm("34 in"),
                Axis.ReadBy.DIAL,
                mm("0.2 in"),
                mm("0.001 in"),
                mm("0.005 in"),
                READING.feed("0.5 in/min"),
                READING.feed("30 in/min"));
        Axis y = new Axis(mm("12 in"), Axis.ReadBy.READOUT, mm("0.2 in"), mm("0.001 in"), mm("0 in"), null, null);
        return new Machine(
                "knee-mill",
                "Knee mill 9 x 49 in",
                Taper.R8,
                List.of(READING.spindleSpeed("660 rev/min"), READING.spindleSpeed("1115 rev/min")),
                null,
                null,
                READING.power("2 hp"),
                READING.ratio("0.75"),
                mm("0 in"),
                mm("18.5 in"),
                mm("1-7/8 in"),
                mm("5 in"),
                mm("3.375 in"),
                List.of(mm("0.0015 in"), mm("0.003 in")),
                mm("3/8 in"),
                x,
                y,
                y,
                new MachineTable(mm("49 in"), mm("9 in"), 3, mm("5/8 in"), mm("2.5 in")),
                mm("6.75 in"),
                new StiffnessBand(
                        READING.stiffness("5 N/um"), READING.stiffness("10 N/um"), READING.stiffness("20 N/um")),
                null,
                null,
                null,
                null,
                null,
                new Kept("by the window", 1),
                SOURCE);
    }

    static Holder collet() {
        return holder("collet-r8-16", Holder.Style.SPINDLE_COLLET, "16 mm", false);
    }

    static Holder chuck() {
        return holder("drill-chuck-13", Holder.Style.DRILL_CHUCK_KEYED, "1 mm", true);
    }

    private static Holder holder(String id, Holder.Style style, String shankLeast, boolean slow) {
        return new Holder(
                id,
                "Holder " + id,
                style,
                Taper.R8,
                mm("6 mm"),
                mm("24 mm"),
                mm(shankLeast),
                mm("16 mm"),
                mm("25 mm"),
                mm("0.005 mm"),
                mm("0.02 mm"),
                slow ? mm("102 mm") : null,
                slow ? READING.spindleSpeed("3000 rev/min") : null,
                false,
                new Kept("collet rack", 1),
                SOURCE);
    }

    static EndMill endMill() {
        return new EndMill(
                "end-mill-16",
                "End mill 16 mm",
                ToolMaterial.HSS,
                mm("16 mm"),
                mm("16 mm"),
                ShankForm.PLAIN,
                mm("32 mm"),
                mm("92 mm"),
                4,
                READING.angle("30 deg"),
                true,
                null,
                null,
                new Kept("drawer 2", 3),
                SOURCE);
    }

    private static FaceMill faceMill() {
        return new FaceMill(
                "face-mill-50",
                "Face mill 50 mm",
                ToolMaterial.CARBIDE,
                mm("50 mm"),
                mm("22 mm"),
                ShankForm.PLAIN,
                mm("9 mm"),
                mm("40 mm"),
                4,
                READING.angle("0 deg"),
                mm("40 mm"),
                new Kept("drawer 1", Kept.NOT_COUNTED),
                SOURCE);
    }

    private static SpotDrill spotDrill() {
        return new SpotDrill(
                "spot-drill-10",
                "Spot drill 10 mm",
                ToolMaterial.HSS,
                mm("10 mm"),
                mm("10 mm"),
                ShankForm.PLAIN,
                mm("25 mm"),
                mm("89 mm"),
                2,
                READING.angle("90 deg"),
                new Kept("drill cabinet", 1),
                SOURCE);
    }

    static Drill drill(String id, String diameter) {
        return new Drill(
                id,
                "Drill " + diameter,
                ToolMaterial.HSS,
                mm(diameter),
                mm(diameter),
                ShankForm.PLAIN,
                mm("69 mm"),
                mm("109 mm"),
                2,
                READING.angle("118 deg"),
                Drill.Series.JOBBER,
                new Kept("drill cabinet", 2),
                SOURCE);
    }

    private static Reamer reamer() {
        return new Reamer(
                "reamer-12-h7",
                "Reamer 12 H7",
                ToolMaterial.HSS,
                mm("12 mm"),
                mm("10 mm"),
                ShankForm.REDUCED,
                mm("44 mm"),
                mm("151 mm"),
                6,
                "H7",
                mm("2 mm"),
                new Kept("reamer box", 1),
                SOURCE);
    }

    private static Tap tap() {
        return new Tap(
                "tap-m8",
                "Tap M8",
                ToolMaterial.HSS,
                mm("8 mm"),
                mm("6 mm"),
                ShankForm.REDUCED,
                mm("22 mm"),
                mm("90 mm"),
                3,
                "M8",
                Tap.Flute.SPIRAL_POINT,
                4,
                new Kept("tap box", 2),
                SOURCE);
    }

    static Vise vise() {
        return new Vise(
                "vise-6in",
                "6 in vise",
                mm("152 mm"),
                mm("44 mm"),
                mm("16 mm"),
                mm("70 mm"),
                mm("200 mm"),
                mm("300 mm"),
                mm("430 mm"),
                Vise.JawFace.SMOOTH,
                READING.force("5 kN"),
                READING.force("15 kN"),
                READING.force("25 kN"),
                READING.mass("38 kg"),
                new Kept("on the table", 1),
                SOURCE);
    }

    private static Parallels parallels() {
        return new Parallels(
                "parallels-10",
                "Parallels 10 mm",
                mm("10 mm"),
                mm("150 mm"),
                List.of(mm("20 mm"), mm("25 mm")),
                new Kept("parallel box", 1),
                SOURCE);
    }

    static Material mildSteel() {
        return new Material(
                "mild-steel",
                "Mild steel",
                List.of("1018", "C15"),
                IsoGroup.P,
                READING.stress("1780 N/mm2"),
                READING.ratio("0.17"),
                READING.ratio("1"),
                null,
                READING.stress("2000 N/mm2"),
                READING.density("7850 kg/m3"),
                READING.stress("205 GPa"),
                READING.ratio("0.0000115"),
                null,
                null,
                SOURCE);
    }

    private static CuttingSpeed cuttingSpeed() {
        return new CuttingSpeed(
                "speed-mild-steel-drill",
                "Mild steel, drill, HSS",
                "mild-steel",
                Cutter.Form.DRILL,
                ToolMaterial.HSS,
                READING.feed("25 m/min"),
                READING.feed("30 m/min"),
                List.of(
                        new CuttingSpeed.FeedAt(mm("2 mm"), mm("0.05 mm")),
                        new CuttingSpeed.FeedAt(mm("12 mm"), mm("0.2 mm"))),
                null,
                SOURCE);
    }

    private static FrictionPair friction() {
        return new FrictionPair(
                "friction-smooth-jaw",
                "Smooth jaw",
                READING.ratio("0.10"),
                READING.ratio("0.15"),
                READING.ratio("0.2"),
                SOURCE);
    }

    private static JointSpring jointSpring() {
        return new JointSpring(
                "joint-spring-collet",
                "Tool in a collet",
                Holder.Style.SPINDLE_COLLET,
                null,
                new StiffnessBand(
                        READING.stiffness("7 N/um"), READING.stiffness("20 N/um"), READING.stiffness("60 N/um")),
                new TiltBand(READING.torque("500 N·m"), READING.torque("1500 N·m"), READING.torque("4500 N·m")),
                SOURCE);
    }

    private static HandTime time() {
        return new HandTime("time-load", "Load a part", READING.time("30 s"), SOURCE);
    }

    static List<ShopRow> rows() {
        return shop().rows();
    }

    static Typed<Length> mm(String text) {
        return READING.length(text);
    }
}
