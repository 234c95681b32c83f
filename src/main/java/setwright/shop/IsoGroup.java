package setwright.shop;

/** Material groups of ISO 513. */
public enum IsoGroup {
    P("steel"),
    M("stainless steel"),
    K("cast iron"),
    N("non-ferrous"),
    S("heat-resisting and titanium alloys"),
    H("hardened");

    private final String words;

    IsoGroup(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
