package setwright.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Ratio;
import setwright.quantity.Speed;
import setwright.quantity.Typed;

/**
 * Cutting speed and feed of one form of cutter in one material.
 *
 * @param material id of the material's row
 * @param form which cutters
 * @param tool what their edge is made of
 * @param speed to start from on a manual machine
 * @param speedHigh upper end of the source's range
 * @param feeds feed per tooth (milling) or per turn (holes) by diameter, smallest diameter first; between two rows
 *     it is interpolated
 * @param lifeExponent n of Taylor's v T^n = C here; null: the usual one of the tool's material
 */
public record CuttingSpeed(
        String id,
        String name,
        String material,
        Cutter.Form form,
        ToolMaterial tool,
        Typed<Speed> speed,
        Typed<Speed> speedHigh,
        List<FeedAt> feeds,
        @Nullable Typed<Ratio> lifeExponent,
        String source)
        implements ShopRow {

    public CuttingSpeed {
        feeds = List.copyOf(feeds);
        if (feeds.isEmpty()) {
            throw new IllegalArgumentException("The cutting speeds " + id + " need at least one feed at a diameter.");
        }
    }

    /** Feed per tooth or per turn at a diameter in mm, between the rows of the table and level beyond its ends; mm. */
    public double feedAt(double diameter) {
        FeedAt below = feeds.get(0);
        for (FeedAt row : feeds) {
            if (row.diameter().inside() >= diameter) {
                double span = row.diameter().inside() - below.diameter().inside();
                double share = span <= 0 ? 0 : (diameter - below.diameter().inside()) / span;
                double from = below.feed().inside();
                return from + Math.max(0, share) * (row.feed().inside() - from);
            }
            below = row;
        }
        return below.feed().inside();
    }

    /** Feed per tooth or per turn at a diameter. */
    public record FeedAt(Typed<Length> diameter, Typed<Length> feed) {}

    @Override
    public Kind kind() {
        return Kind.CUTTING_SPEED;
    }
}
