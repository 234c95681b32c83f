package setwright.geometry;

import java.util.List;
import java.util.function.Predicate;

/** The tool assembly: turned sections about the spindle axis, from the tool point up to nose, quill and head. */
public record ToolStack(List<Section> sections) {
    public ToolStack {
        sections = List.copyOf(sections);
    }

    public static ToolStack of(Section... sections) {
        return new ToolStack(List.of(sections));
    }

    /** The sections with one of these roles, such as those to be kept clear of the part's own stock. */
    public ToolStack only(Role... roles) {
        List<Role> wanted = List.of(roles);
        return filtered(section -> wanted.contains(section.role()));
    }

    /** The sections without one of these roles. */
    public ToolStack without(Role... roles) {
        List<Role> unwanted = List.of(roles);
        return filtered(section -> !unwanted.contains(section.role()));
    }

    private ToolStack filtered(Predicate<Section> wanted) {
        return new ToolStack(sections.stream().filter(wanted).toList());
    }

    /** How far the lowest section with a role is above the tool point; NaN where there is none. */
    public double heightOf(Role role) {
        return only(role).sections.stream()
                .mapToDouble(section -> section.profile().zLow())
                .min()
                .orElse(Double.NaN);
    }

    /** The height of the highest section's top above the tool point. */
    public double height() {
        return sections.stream()
                .mapToDouble(section -> section.profile().zHigh())
                .max()
                .orElse(0);
    }

    public double greatestRadius() {
        return sections.stream()
                .mapToDouble(section -> section.profile().greatestRadius())
                .max()
                .orElse(0);
    }
}
