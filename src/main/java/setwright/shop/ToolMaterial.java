package setwright.shop;

/** What the cutting edge is made of. */
public enum ToolMaterial {
    HSS("high speed steel"),
    CARBIDE("carbide");

    private final String words;

    ToolMaterial(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
