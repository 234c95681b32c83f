package setwright.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Density;
import setwright.quantity.Ratio;
import setwright.quantity.Stress;
import setwright.quantity.Typed;

/**
 * A work material.
 *
 * @param calledToo other names by which people type it, for instance {@code 1018}
 * @param group ISO 513 letter
 * @param kc11 specific cutting force at 1 mm chip thickness and 1 mm width
 * @param mc exponent of the specific cutting force
 * @param drillFactor work-material factor of the handbook's drilling formulas
 * @param unitPower handbook power at the cutter for a removal rate; null where no row was read
 * @param tapForce specific force of the tapping formula it belongs to (kc P² d / 8000)
 * @param elasticModulus Young's modulus
 * @param expansion thermal expansion per kelvin
 * @param hazard what bites with its chips or dust; null where nothing special
 * @param edge what cutting tests found of it; null where none was read
 */
public record Material(
        String id,
        String name,
        List<String> calledToo,
        IsoGroup group,
        Typed<Stress> kc11,
        Typed<Ratio> mc,
        Typed<Ratio> drillFactor,
        @Nullable Typed<Stress> unitPower,
        Typed<Stress> tapForce,
        Typed<Density> density,
        Typed<Stress> elasticModulus,
        Typed<Ratio> expansion,
        @Nullable String hazard,
        @Nullable LinearEdge edge,
        String source)
        implements ShopRow {

    public Material {
        calledToo = List.copyOf(calledToo);
    }

    @Override
    public Kind kind() {
        return Kind.MATERIAL;
    }
}
