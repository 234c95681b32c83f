package setwright.shop;

/** What the cutting edge is made of. */
public enum ToolMaterial {
    HSS,
    CARBIDE
}
