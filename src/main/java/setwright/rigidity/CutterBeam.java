package setwright.rigidity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.BoredCutter;
import setwright.shop.BoringBar;
import setwright.shop.Cutter;
import setwright.shop.KeyseatCutter;
import setwright.shop.TSlotCutter;
import setwright.shop.ToolMaterial;

/** What every cutter of a shop is as a beam: the one place that says so. */
public final class CutterBeam {
    public static final Table CORE = new Table(
            "core ratio",
            "diameter of a rod as stiff as the fluted part over the cutting diameter: end mills 0.8, twist drills 0.6,"
                    + " reamers 0.85, taps 0.7, counterbores and countersinks 0.8",
            Unit.NONE,
            Source.of(
                    "Kops & Vo 1990 (abstract) for end mills; from memory: the others, drills by the weak axis of their"
                            + " web"));

    /** Of a dovetail cutter, the neck that its flank leaves (common practice). */
    private static final double DOVETAIL_NECK = 0.6;

    private CutterBeam() {}

    /** The cutter as it stands out, from its holder to its tip; its modulus is the expected one. */
    public static ToolBeam of(Cutter cutter, double stickOut) {
        return new ToolBeam(sections(cutter, stickOut), modulus(cutter));
    }

    /** Diameter of a rod as stiff as the fluted part over the cutting diameter. */
    public static double core(Cutter.Form form) {
        return switch (form) {
            case DRILL, CENTRE_DRILL, SPOT_DRILL -> 0.6;
            case TAP -> 0.7;
            case REAMER -> 0.85;
            case END_MILL,
                    FACE_MILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    FLY_CUTTER,
                    SHELL_MILL,
                    BORING_BAR,
                    SLITTING_SAW,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    FORM_CUTTER,
                    SCRIBER -> FlutedTool.END_MILL_CORE;
        };
    }

    private static List<BeamSection> sections(Cutter cutter, double out) {
        double head = Math.min(out, cutter.fluteLength().inside());
        double diameter = cutter.diameter().inside();
        double shank = cutter.shank().inside();
        return switch (cutter.form()) {
            case FACE_MILL, FLY_CUTTER -> List.of(new BeamSection(out, FlutedTool.END_MILL_CORE * diameter));
            case SHELL_MILL, SLITTING_SAW, FORM_CUTTER -> onArbor((BoredCutter) cutter, out);
            case BORING_BAR -> bar((BoringBar) cutter, out);
            case KEYSEAT_CUTTER ->
                necked(out, shank, head, ((KeyseatCutter) cutter).neckDiameter().inside());
            case T_SLOT_CUTTER ->
                necked(out, shank, head, ((TSlotCutter) cutter).neckDiameter().inside());
            case DOVETAIL_CUTTER -> necked(out, shank, head, Math.min(shank, DOVETAIL_NECK * diameter));
            case END_MILL, SPOT_DRILL, DRILL, REAMER, TAP, CENTRE_DRILL, COUNTERSINK, COUNTERBORE ->
                fluted(out, shank, head, core(cutter.form()) * diameter);
            case CHAMFER_MILL, CORNER_ROUNDER, SCRIBER ->
                fluted(out, shank, head, core(cutter.form()) * Math.min(diameter, shank));
        };
    }

    private static List<BeamSection> fluted(double out, double shank, double flutes, double rod) {
        return joined(new BeamSection(out - flutes, shank), new BeamSection(flutes, rod));
    }

    /** A head on a neck as long as the head is wide, two diameters of it at most; then the shank. */
    private static List<BeamSection> necked(double out, double shank, double head, double neck) {
        double thin = Math.min(out - head, 2 * neck);
        return joined(
                new BeamSection(out - head - thin, shank), new BeamSection(thin, neck), new BeamSection(head, neck));
    }

    /** The bore's own arbor as far as the cutter, and the cutter on it. */
    private static List<BeamSection> onArbor(BoredCutter cutter, double out) {
        double width = Math.min(out, cutter.width().inside());
        double bore = cutter.bore().inside();
        double body = cutter.form() == Cutter.Form.SHELL_MILL
                ? Math.max(bore, FlutedTool.END_MILL_CORE * cutter.diameter().inside())
                : bore;
        return joined(new BeamSection(out - width, body), new BeamSection(width, body));
    }

    private static List<BeamSection> bar(BoringBar bar, double out) {
        double thin = Math.min(out, bar.reach().inside());
        return joined(
                new BeamSection(out - thin, bar.shank().inside()),
                new BeamSection(thin, bar.neckDiameter().inside()));
    }

    private static List<BeamSection> joined(BeamSection... all) {
        List<BeamSection> kept = new ArrayList<>();
        for (BeamSection section : all) {
            if (section.length() > 0) {
                kept.add(section);
            }
        }
        return kept.isEmpty() ? List.of(all[all.length - 1]) : kept;
    }

    /** Of bodies, arbors and bars with tipped edges it is that of steel. */
    private static double modulus(Cutter cutter) {
        return switch (cutter.form()) {
            case FACE_MILL, FLY_CUTTER, SHELL_MILL, SLITTING_SAW, FORM_CUTTER -> ToolMaterials.STEEL;
            case BORING_BAR -> body(((BoringBar) cutter).body());
            default -> ToolMaterials.modulus(cutter.material()).expected();
        };
    }

    private static double body(@Nullable ToolMaterial made) {
        return made == null ? ToolMaterials.STEEL : ToolMaterials.modulus(made).expected();
    }
}
