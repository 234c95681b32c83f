package setwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.job.ZeroFinding;
import setwright.shop.Machine;

/** Words about zero for a machine with dials, 0.2 in a turn with 0.005 in of backlash in X, and one with readouts. */
class ZeroWordsTest {
    private static final List<Machine> MACHINES =
            ((ShopRead.Opened) ShopFolder.packed()).shop().all(Machine.class);
    private static final Machine DIALS = named("knee-mill-r8-9x49");
    private static final Machine READOUTS = named("knee-mill-r8-vari-9x42");

    private static Machine named(String id) {
        return MACHINES.stream()
                .filter(machine -> machine.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_readout_is_told_the_sign_of_half_the_tip() {
        assertThat(new ZeroWords(ZeroFinding.EDGES, READOUTS).find())
                .contains("left edge: touch it from the left", "set X to minus half the tip")
                .contains("front edge: touch it from the front", "set Y to minus half the tip");
        assertThat(new ZeroWords(ZeroFinding.JAW_AND_STOP, READOUTS).find())
                .contains("from the right", "set X to plus half the tip", "set Y to minus half the tip");
    }

    @Test
    void a_dial_is_wound_on_by_half_the_tip_the_way_its_places_are_come_to() {
        ZeroWords words = new ZeroWords(ZeroFinding.EDGES, DIALS);

        assertThat(words.find()).contains("wind on by half the tip, set the X dial to nought");
        assertThat(words.dials())
                .isEqualTo("X 0.200 in a turn, 200 divisions of 0.001 in, come from the left, past a place go back"
                        + " 0.005 in and a little more; Y 0.200 in a turn, 200 divisions of 0.001 in, come from the"
                        + " front, past a place go back 0.006 in and a little more");
        assertThat(words.check()).contains("one turn off is 0.200 in");
    }

    @Test
    void between_edges_the_tip_cancels() {
        assertThat(new ZeroWords(ZeroFinding.BETWEEN_EDGES, DIALS).find()).contains("the tip cancels");
    }

    @ParameterizedTest
    @EnumSource(ZeroFinding.class)
    void every_way_says_how_both_axes_come_to_nought(ZeroFinding way) {
        for (Machine machine : MACHINES) {
            assertThat(new ZeroWords(way, machine).find()).contains("X").contains("Y");
        }
        assertThat(new ZeroWords(way, READOUTS).dials()).isEmpty();
    }
}
