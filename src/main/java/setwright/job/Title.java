package setwright.job;

/** The title block: what the part is called, its drawing and the drawing's revision. */
public record Title(String part, String drawing, String revision) {}
