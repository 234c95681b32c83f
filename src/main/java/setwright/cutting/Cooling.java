package setwright.cutting;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.IsoGroup;
import setwright.shop.ToolMaterial;

/** What is put on a cut, and what that does to the speed that the edge stands. */
public enum Cooling {
    DRY,
    BRUSHED,
    MIST,
    FLOOD;

    public static final Table FACTOR = new Table(
            "factor for what is put on the cut",
            "high speed steel: brushed 1, dry 0.8, mist 1.1, flood 1.2; in cast iron, which is cut dry, and for carbide,"
                    + " which cracks when it is quenched between cuts, 1 throughout",
            Unit.NONE,
            Source.of("common practice: tables for manual machines count on a brush of oil"));

    private static final double DRY_HSS = 0.8;
    private static final double MIST_HSS = 1.1;
    private static final double FLOOD_HSS = 1.2;

    /** By how much the speed of the table is multiplied. */
    public double factor(ToolMaterial tool, IsoGroup work) {
        if (tool == ToolMaterial.CARBIDE || work == IsoGroup.K) {
            return 1;
        }
        return switch (this) {
            case DRY -> DRY_HSS;
            case BRUSHED -> 1;
            case MIST -> MIST_HSS;
            case FLOOD -> FLOOD_HSS;
        };
    }
}
