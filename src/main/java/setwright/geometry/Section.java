package setwright.geometry;

/** A turned section of the tool assembly; its heights are above the tool point. */
public record Section(String name, Role role, Profile profile) {}
