package setwright.shop;

/** How the spindle takes tooling. The 7:24 flange styles of one number do not fit each other. */
public enum Taper {
    R8,
    ISO_30,
    ISO_40,
    ISO_50,
    MORSE_2,
    MORSE_3,
    MORSE_4,
    /** A taper of its maker: only tooling with a straight shank goes into its one collet set. */
    ODD
}
