package setwright.shop;

/** How the spindle takes tooling. The 7:24 flange styles of one number do not fit each other. */
public enum Taper {
    R8,
    ISO_30,
    ISO_40,
    MORSE_3
}
