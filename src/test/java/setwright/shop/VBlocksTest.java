package setwright.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** A round bar in a vee: geometry, worked from the distance of its middle to the flank. */
class VBlocksTest {
    private static VBlocks vee(String angle) {
        return new VBlocks(
                "v",
                "V-blocks",
                angle(angle),
                length("5 mm"),
                length("70 mm"),
                length("75 mm"),
                length("70 mm"),
                length("60 mm"),
                length("25 mm"),
                new Kept("drawer", 1),
                "computed");
    }

    private static Typed<Angle> angle(String text) {
        return new Reading(UnitSystem.METRIC).angle(text);
    }

    private static Typed<Length> length(String text) {
        return new Reading(UnitSystem.METRIC).length(text);
    }

    @Test
    void in_a_right_angled_vee_the_middle_is_root_two_radii_over_the_apex() {
        assertThat(vee("90 deg").centreHeight(40)).isCloseTo(25 + 20 * Math.sqrt(2), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 90, 120})
    void the_middle_of_the_bar_is_a_radius_away_from_the_flank(double degrees) {
        double over = vee(degrees + " deg").centreHeight(30) - 25;
        double slope = 1 / Math.tan(Math.toRadians(degrees / 2));
        double toFlank = over / Math.sqrt(1 + slope * slope);
        assertThat(toFlank).isCloseTo(15, within(1e-9));
    }
}
