package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class ProfileGapTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Profile WALL = Profile.cylinder(0, 20, 0);

    /** The edge of a wall 13 from the axis, 4 below a cylinder of radius 10: the hypotenuse of 3 and 4. */
    @Test
    void a_cylinder_over_an_edge_clears_it_by_the_hypotenuse_of_both_gaps() {
        ProfileGap gap = ProfileGap.between(Profile.cylinder(24, 60, 10), WALL, 13);

        assertThat(gap.clearance()).isCloseTo(5, EXACT);
        assertThat(gap.side()).isCloseTo(3, EXACT);
        assertThat(gap.height()).isCloseTo(4, EXACT);
    }

    @Test
    void a_cylinder_beside_or_above_clears_by_one_gap_alone() {
        assertThat(ProfileGap.between(Profile.cylinder(5, 60, 10), WALL, 13).clearance())
                .isCloseTo(3, EXACT);
        assertThat(ProfileGap.between(Profile.cylinder(24, 60, 10), WALL, -2).clearance())
                .isCloseTo(4, EXACT);
        assertThat(ProfileGap.between(Profile.cylinder(-9, -3, 10), WALL, 4).clearance())
                .isCloseTo(3, EXACT);
    }

    @Test
    void overlap_is_the_smaller_of_both_and_a_mere_touch_is_nought() {
        assertThat(ProfileGap.between(Profile.cylinder(18, 60, 10), WALL, 4).clearance())
                .isCloseTo(-2, EXACT);
        assertThat(ProfileGap.between(Profile.cylinder(5, 60, 10), WALL, 9).clearance())
                .isCloseTo(-1, EXACT);
        assertThat(ProfileGap.between(Profile.cylinder(20, 60, 10), WALL, 4).clearance())
                .isCloseTo(0, EXACT);
        assertThat(ProfileGap.between(Profile.cylinder(5, 60, 10), WALL, 10).clearance())
                .isCloseTo(0, EXACT);
    }

    /** A cone of 45 degrees passes the edge at 13 - 3 = 10 in the direction of its normal: 10 / √2. */
    @Test
    void a_cone_clears_an_edge_square_to_its_slant() {
        Profile cone = new Profile(17, 37, 0, 20);

        ProfileGap gap = ProfileGap.between(cone, WALL, 13);

        assertThat(gap.clearance()).isCloseTo(10 / Math.sqrt(2), EXACT);
        assertThat(gap.side()).isCloseTo(5, EXACT);
        assertThat(gap.height()).isCloseTo(5, EXACT);
        assertThat(gap.zTool()).isCloseTo(25, EXACT);
        assertThat(gap.zBody()).isCloseTo(20, EXACT);
    }

    /** The same cone 10 further in: its slant is 10 / √2 within the wall, 10 deep in height and 10 sideways. */
    @Test
    void a_cone_that_overlaps_an_edge_is_lifted_by_its_slant() {
        assertThat(ProfileGap.between(new Profile(7, 27, 0, 20), WALL, 3).clearance())
                .isCloseTo(-10, EXACT);
        assertThat(ProfileGap.between(new Profile(15, 35, 0, 20), WALL, -8).clearance())
                .isCloseTo(-5, EXACT);
    }

    @Test
    void two_cones_clear_square_to_slants_that_are_parallel() {
        Profile tool = new Profile(0, 10, 0, 10);
        Profile body = new Profile(-5, 10, 15, 0);

        assertThat(ProfileGap.between(tool, body, 12).clearance()).isCloseTo(2 / Math.sqrt(2), EXACT);
    }

    @Test
    void profiles_without_height_or_radius_have_their_distance_too() {
        Profile needle = Profile.cylinder(3, 40, 0);
        Profile disc = Profile.cylinder(5, 5, 8);

        assertThat(ProfileGap.between(needle, WALL, 2).clearance()).isCloseTo(2, EXACT);
        assertThat(ProfileGap.between(disc, Profile.cylinder(9, 9, 4), 15).clearance())
                .isCloseTo(5, EXACT);
        assertThat(ProfileGap.between(new Profile(5, 5, 2, 8), WALL, 11).clearance())
                .isCloseTo(3, EXACT);
    }

    @Test
    void no_sample_of_two_profiles_is_nearer_than_their_distance() {
        Rounds.each(41, (random, round) -> {
            Profile tool = profile(random);
            Profile body = profile(random);
            double apart = 40 * random.nextDouble() - 10;

            ProfileGap gap = ProfileGap.between(tool, body, apart);
            ProfileGap back = ProfileGap.between(body, tool, apart);
            double sampled = sampled(tool, body, apart);

            assertThat(back.clearance()).isCloseTo(gap.clearance(), EXACT);
            assertThat(back.zBody()).isBetween(tool.zLow() - 1e-9, tool.zHigh() + 1e-9);
            assertThat(gap.clearance()).isLessThanOrEqualTo(sampled + 1e-9);
            assertThat(Math.max(0, gap.clearance())).isGreaterThanOrEqualTo(sampled - 0.3);
        });
    }

    @Test
    void lifted_or_shifted_by_the_overlap_the_two_just_touch() {
        Rounds.each(42, (random, round) -> {
            Profile tool = profile(random);
            Profile body = profile(random);
            double apart = 12 * random.nextDouble() - 2;
            ProfileGap gap = ProfileGap.between(tool, body, apart);
            if (gap.clearance() < -1e-6) {
                double lift = -gap.height();
                double up = ProfileGap.between(tool.lifted(lift), body, apart).clearance();
                double down =
                        ProfileGap.between(tool.lifted(-lift), body, apart).clearance();
                double aside =
                        ProfileGap.between(tool, body, apart - gap.side()).clearance();

                assertThat(Math.max(up, down)).isCloseTo(0, within(1e-6));
                assertThat(aside).isCloseTo(0, within(1e-6));
                assertThat(gap.clearance()).isEqualTo(Math.max(gap.side(), gap.height()));
            }
        });
    }

    private static Profile profile(RandomGenerator random) {
        double low = 30 * random.nextDouble();
        double radius = 10 * random.nextDouble();
        double other = random.nextInt(3) == 0 ? radius : 10 * random.nextDouble() * random.nextInt(2);
        return new Profile(low, low + 20 * random.nextDouble(), radius, other);
    }

    private static double sampled(Profile tool, Profile body, double apart) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 200; i++) {
            double z = tool.zLow() + i / 200.0 * tool.height();
            double r = tool.radiusLow() + i / 200.0 * (tool.radiusHigh() - tool.radiusLow());
            for (int k = 0; k <= 200; k++) {
                double side = apart - r - (body.radiusLow() + k / 200.0 * (body.radiusHigh() - body.radiusLow()));
                double height = z - (body.zLow() + k / 200.0 * body.height());
                least = Math.min(least, Math.hypot(Math.max(0, side), height));
            }
        }
        return least;
    }
}
