package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.reach.ToolChange.Asked;
import setwright.reach.ToolChange.Lost;
import setwright.reach.ToolChange.Place;

class ToolChangeTest {
    private static final NoseRange KNEE_MILL = new NoseRange(0, 469.9, 127);

    /**
     * Part top at 143, vise jaw at 117; the drill chuck on its R8 shank, 205 below the nose with its drill, wants 102. Over
     * the hole there are 450 - 205 - 143 = 102, aside 430 - 205 - 117 = 108, with the knee down 469.9 - 205 - 143 = 121.9.
     */
    @ParameterizedTest
    @CsvSource({"450, OVER_THE_HOLE", "430, TABLE_RUN_ASIDE", "424, TABLE_RUN_ASIDE", "423, KNEE_DOWN"})
    void the_cheapest_place_with_room_is_named(double nose, Place place) {
        var chuck = ToolChange.of(new Asked(nose, 205, 143, 117, DropOut.r8Shank()), KNEE_MILL);

        assertThat(chuck.cheapest().orElseThrow().place()).isEqualTo(place);
    }

    @Test
    void a_drill_comes_out_of_its_chuck_where_the_chuck_does_not_come_out() {
        var drill = ToolChange.of(new Asked(400, 205, 143, 117, DropOut.drillChuck(25)), KNEE_MILL);

        assertThat(drill.cheapest().orElseThrow())
                .isEqualTo(new ToolChange.Room(Place.OVER_THE_HOLE, 400 - 205 - 143, 25 + 12));
    }

    /** Over the hole there are 430 - 205 - 143 = 82 for 102: aside and down both do, and the one that loses less is named. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, TABLE_RUN_ASIDE",
        "0.013, 0, KNEE_DOWN",
        "0.013, 0.02, TABLE_RUN_ASIDE",
        "0.013, 0.005, KNEE_DOWN"
    })
    void of_the_places_that_do_the_one_that_loses_least_is_named(double aside, double knee, Place place) {
        var chuck = ToolChange.of(
                new Asked(430, 205, 143, 117, DropOut.r8Shank(), new Lost(aside, 0), new Lost(0, knee)), KNEE_MILL);

        var cheapest = chuck.cheapest().orElseThrow();
        assertThat(cheapest.place()).isEqualTo(place);
        assertThat(cheapest.lost().sum()).isEqualTo(Math.min(aside, knee));
    }

    @Test
    void a_change_is_stopped_only_when_no_place_works() {
        var bench = new NoseRange(0, 330, 127);
        var none = ToolChange.of(new Asked(300, 205, 143, 117, DropOut.r8Shank()), bench);

        assertThat(none.cheapest()).isEmpty();
        assertThat(none.places()).hasSize(4);
        assertThat(none.roomiest().place()).isEqualTo(Place.KNEE_DOWN_AND_ASIDE);
        assertThat(none.roomiest().margin()).isEqualTo(330 - 205 - 117 - 102);
    }

    @Test
    void room_over_the_hole_is_had_just_from_the_height_that_is_said() {
        double from = ToolChange.changeFrom(205, 143, DropOut.steepTaper(30));

        assertThat(from).isEqualTo(143 + 205 + 68);
        assertThat(placeAt(from)).isEqualTo(Place.OVER_THE_HOLE);
        assertThat(placeAt(from - 0.5)).isNotEqualTo(Place.OVER_THE_HOLE);
    }

    private static Place placeAt(double nose) {
        return ToolChange.of(new Asked(nose, 205, 143, 117, DropOut.steepTaper(30)), KNEE_MILL)
                .cheapest()
                .orElseThrow()
                .place();
    }

    @Test
    void only_places_with_the_knee_down_move_it() {
        assertThat(Place.values())
                .filteredOn(Place::movesKnee)
                .containsExactly(Place.KNEE_DOWN, Place.KNEE_DOWN_AND_ASIDE);
    }

    /** From memory: R8 about 4 in; DIN 2080 no. 30 and 40; ISO 296 with tang. */
    @Test
    void drop_outs_are_by_kind() {
        assertThat(DropOut.r8Shank().length()).isEqualTo(102);
        assertThat(DropOut.r8Collet(28).length()).isEqualTo(28);
        assertThat(DropOut.steepTaper(40).length()).isEqualTo(93);
        assertThat(DropOut.morse(3).length()).isEqualTo(99);
        assertThat(DropOut.colletChuck(40).kind()).isEqualTo(DropOut.Kind.COLLET_CHUCK);
        assertThat(DropOut.setScrewHolder(40).kind()).isEqualTo(DropOut.Kind.SET_SCREW_HOLDER);
        assertThatThrownBy(() -> DropOut.steepTaper(35)).hasMessageContaining("30, 40, 45 and 50, not 35");
        assertThatThrownBy(() -> DropOut.morse(7)).hasMessageContaining("0 to 6, not 7");
    }
}
