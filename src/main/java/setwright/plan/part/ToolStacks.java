package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Profile;
import setwright.geometry.Role;
import setwright.geometry.Section;
import setwright.geometry.ToolStack;
import setwright.job.DrawnOperation;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Machine;

/** The tool assembly of an operation as turned sections from the tool point up to nose and quill. */
final class ToolStacks {
    /** How much of the spindle's nose stands below the quill, mm (common practice). */
    private static final double NOSE_LENGTH = 20;

    private ToolStacks() {}

    static ToolStack of(DrawnOperation operation, Cutter cutter, Holder holder, Machine machine) {
        double stickOut = operation.stickOut().value().inside();
        double face = stickOut + holder.projection().inside();
        List<Section> sections = new ArrayList<>();
        addCutter(sections, cutter, stickOut);
        if (face > stickOut) {
            add(
                    sections,
                    holder.name(),
                    Role.HOLDER,
                    stickOut,
                    face,
                    holder.noseDiameter().inside());
        }
        double nose = face + NOSE_LENGTH;
        double quill = nose + machine.quillStroke().inside();
        add(
                sections,
                "spindle nose",
                Role.SPINDLE_NOSE,
                face,
                nose,
                machine.noseDiameter().inside());
        add(sections, "quill", Role.QUILL, nose, quill, machine.quillDiameter().inside());
        return new ToolStack(sections);
    }

    private static void addCutter(List<Section> sections, Cutter cutter, double stickOut) {
        double radius = cutter.diameter().inside() / 2;
        double point = Math.min(OperationWay.pointLength(cutter), stickOut);
        double flutes = Math.min(Math.max(cutter.fluteLength().inside(), point), stickOut);
        if (point > 0) {
            sections.add(new Section("point", Role.CUTTER, new Profile(0, point, 0, radius)));
        }
        if (flutes > point) {
            add(
                    sections,
                    cutter.name(),
                    Role.CUTTER,
                    point,
                    flutes,
                    cutter.diameter().inside());
        }
        if (stickOut > flutes) {
            boolean body = cutter.form() == Cutter.Form.FACE_MILL || cutter.bored();
            double diameter = body ? cutter.diameter().inside() : cutter.shank().inside();
            add(sections, body ? "cutter body" : "shank", Role.SHANK, flutes, stickOut, diameter);
        }
    }

    private static void add(List<Section> sections, String name, Role role, double low, double high, double diameter) {
        sections.add(new Section(name, role, Profile.cylinder(low, high, diameter / 2)));
    }
}
