package setwright.window.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.job.Block;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.job.TableHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.Parallels;
import setwright.shop.Shop;
import setwright.shop.Vise;

/**
 * How the work of the quick check is held: in the vise on parallels that leave a usual grip, or strapped on the table.
 *
 * @param blank whose top stands as high over jaws or table as was asked
 */
record QuickGrip(Holding holding, Block blank, List<String> clockedIn) {
    /** Depth of grip that the packing aims at, mm (common practice). */
    private static final double USUAL_GRIP = 15;

    private static final double LEAST_GRIP = 6;

    static QuickGrip of(String held, Typed<Length> height, Shop shop, UnitSystem units) {
        return shop.row(held, Vise.class)
                .map(vise -> inVise(vise, height, shop, units))
                .orElseGet(() ->
                        new QuickGrip(TableHolding.pencilled(), QuickJob.block(height.inside(), units), List.of()));
    }

    private record Packed(String set, Typed<Length> height) {}

    private static QuickGrip inVise(Vise vise, Typed<Length> height, Shop shop, UnitSystem units) {
        double jaws = vise.jawHeight().inside();
        Optional<Packed> packing = shop.all(Parallels.class).stream()
                .filter(set -> set.kept().owned() != 0)
                .flatMap(set -> set.heights().stream().map(tall -> new Packed(set.id(), tall)))
                .filter(packed -> jaws - packed.height().inside() >= LEAST_GRIP)
                .min(Comparator.comparingDouble(
                        packed -> Math.abs(jaws - packed.height().inside() - USUAL_GRIP)));
        double grip = jaws - packing.map(packed -> packed.height().inside()).orElse(0.0);
        ViseHolding holding = ViseField.VISE.write(ViseHolding.pencilled(), Plannable.inked(vise.id()));
        String set = packing.map(Packed::set).orElse(ViseHolding.NONE);
        ViseHolding on = ViseField.PARALLELS.write(holding, Plannable.inked(set));
        ViseHolding packed = packing.map(tall -> ViseField.PARALLEL_HEIGHT.write(on, Plannable.inked(tall.height())))
                .orElse(on);
        return new QuickGrip(packed, QuickJob.block(height.inside() + grip, units), List.of(vise.id()));
    }
}
