package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A boring bar for the boring head.
 *
 * @param diameter the least bore that it goes into
 * @param reach depth of the bore that it can reach
 * @param body what the bar itself is made of; null: steel, with an edge brazed or screwed on
 */
public record BoringBar(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> neckDiameter,
        Typed<Length> reach,
        @Nullable ToolMaterial body,
        Kept kept,
        String source)
        implements Cutter {
    /** A steel bar. */
    public BoringBar(
            String id,
            String name,
            ToolMaterial material,
            Typed<Length> diameter,
            Typed<Length> shank,
            ShankForm shankForm,
            Typed<Length> fluteLength,
            Typed<Length> overallLength,
            int teeth,
            Typed<Length> neckDiameter,
            Typed<Length> reach,
            Kept kept,
            String source) {
        this(
                id,
                name,
                material,
                diameter,
                shank,
                shankForm,
                fluteLength,
                overallLength,
                teeth,
                neckDiameter,
                reach,
                null,
                kept,
                source);
    }

    @Override
    public Form form() {
        return Form.BORING_BAR;
    }
}
