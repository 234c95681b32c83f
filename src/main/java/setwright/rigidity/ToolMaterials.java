package setwright.rigidity;

import setwright.quantity.Band;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.ToolMaterial;

/** What tools are made of: how stiff and how strong. */
public final class ToolMaterials {
    public static final Table MODULUS = new Table(
            "modulus of elasticity",
            "high speed steel 210 to 230 GPa, carbide with 10 to 12 % cobalt 560 to 590 GPa",
            Unit.GPA,
            Source.of("from memory: high speed steel 210, end-mill grades of carbide 580"));

    public static final Table BENDING_STRENGTH = new Table(
            "bending strength",
            "high speed steel 800 N/mm², carbide 1000 N/mm², 0.7 of it at worst",
            Unit.N_PER_MM2,
            Source.of("from memory: with the notch of the flutes, editable"));

    /** Modulus of steel bodies, arbors and bars, N/mm² (Isakov, Cutting Tool Engineering, July 2019, p.75: 206 GPa). */
    public static final double STEEL = 206000;

    private static final double AT_WORST = 0.7;

    private ToolMaterials() {}

    /** Modulus of elasticity, N/mm²; the expected value is the one to compute with. */
    public static Band modulus(ToolMaterial material) {
        return switch (material) {
            case HSS -> new Band(210000, 210000, 230000);
            case CARBIDE -> new Band(560000, 580000, 590000);
        };
    }

    /** Bending strength, N/mm². */
    public static Band bendingStrength(ToolMaterial material) {
        return switch (material) {
            case HSS -> strength(800);
            case CARBIDE -> strength(1000);
        };
    }

    private static Band strength(double expected) {
        return new Band(AT_WORST * expected, expected, expected);
    }
}
