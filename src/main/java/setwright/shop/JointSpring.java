package setwright.shop;

import org.jspecify.annotations.Nullable;

/**
 * How much a joint of the tooling gives: the clamp of a kind of holder, or a spindle taper. Bands, as nobody measured them.
 *
 * @param style the kind of holder whose clamp it is; null for a taper
 * @param taper the spindle taper; null for a clamp
 * @param shift sideways at the holder's face; null for a taper, whose shift is in the spring of the machine
 */
public record JointSpring(
        String id,
        String name,
        Holder.@Nullable Style style,
        @Nullable Taper taper,
        @Nullable StiffnessBand shift,
        TiltBand tilt,
        String source)
        implements ShopRow {
    @Override
    public Kind kind() {
        return Kind.JOINT_SPRING;
    }
}
