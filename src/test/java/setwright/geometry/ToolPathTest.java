package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.geometry.Move.Kind.APPROACH;
import static setwright.geometry.Move.Kind.CROSS;
import static setwright.geometry.Move.Kind.CUT;
import static setwright.geometry.Move.Kind.PLUNGE;
import static setwright.geometry.Move.Kind.RETRACT;

import org.junit.jupiter.api.Test;
import setwright.geometry.plane.Point2;

class ToolPathTest {
    private static final ToolPath HOLES = ToolPath.from(new Point3(0, 0, 50))
            .toHeight(APPROACH, 42)
            .toHeight(PLUNGE, 30)
            .toHeight(RETRACT, 50)
            .across(CROSS, new Point2(30, 40))
            .toHeight(PLUNGE, 30);

    @Test
    void each_move_starts_where_the_one_before_ends() {
        for (int i = 1; i < HOLES.moves().size(); i++) {
            assertThat(HOLES.moves().get(i).from())
                    .isEqualTo(HOLES.moves().get(i - 1).to());
        }
        assertThat(HOLES.end()).isEqualTo(new Point3(30, 40, 30));
    }

    @Test
    void lengths_add_up_by_kind() {
        assertThat(HOLES.length(PLUNGE)).isEqualTo(12 + 20);
        assertThat(HOLES.length(CROSS)).isEqualTo(50);
        assertThat(HOLES.length()).isEqualTo(8 + 12 + 20 + 50 + 20);
        assertThat(HOLES.only(CROSS).moves()).hasSize(1);
    }

    @Test
    void a_full_turn_comes_back_and_is_as_long_as_its_circle() {
        ToolPath round = ToolPath.from(new Point3(10, 0, 5)).fullTurn(CUT, new Point2(4, 0), true);

        assertThat(round.end().distance(new Point3(10, 0, 5))).isCloseTo(0, within(1e-12));
        assertThat(round.length(CUT)).isCloseTo(12 * Math.PI, within(1e-9));
        assertThat(round.box().size().distance(new Point3(12, 12, 0))).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_shifted_path_goes_the_same_way_elsewhere() {
        ToolPath shifted = HOLES.shifted(new Point3(100, 50, -10));

        assertThat(shifted.end()).isEqualTo(new Point3(130, 90, 20));
        assertThat(shifted.length()).isEqualTo(HOLES.length());
    }
}
