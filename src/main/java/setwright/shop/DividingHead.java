package setwright.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A dividing head with its plates.
 *
 * @param swing largest diameter over its base
 * @param ratio turns of the crank for one of the spindle
 * @param plates the hole circles of each plate, for instance {@code 15 16 17 18 19 20}
 * @param gears teeth of its change gears, {@code 24 24 28}; null where it has none
 * @param lock torque that its spindle lock holds; null where nobody knows
 */
public record DividingHead(
        String id,
        String name,
        Typed<Length> centreHeight,
        Typed<Length> swing,
        int ratio,
        List<String> plates,
        @Nullable String gears,
        @Nullable Typed<Torque> lock,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {
    public DividingHead {
        plates = List.copyOf(plates);
    }

    @Override
    public Kind kind() {
        return Kind.DIVIDING_HEAD;
    }
}
