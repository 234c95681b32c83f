package setwright.location;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.location.layout.EdgeFind;
import setwright.quantity.CsvRows;

/** Circles, tips and dials beside whole tables. */
class LocationTablesTest {
    static List<CsvRows.Row> holes() {
        return CsvRows.beside(LocationTablesTest.class, "bolt-circle-factors.csv");
    }

    static List<CsvRows.Row> tips() {
        return CsvRows.beside(LocationTablesTest.class, "edge-finder-offsets.csv");
    }

    static List<CsvRows.Row> dials() {
        return CsvRows.beside(LocationTablesTest.class, "dials.csv");
    }

    /** Both kinds, a hole at the top or two astride of it, from the centre and from the corner. */
    @Test
    void every_hole_of_every_circle_is_where_the_table_has_it() {
        for (CsvRows.Row row : holes()) {
            int count = (int) row.number("n");
            double start = row.text("type").equals("A") ? 90 : 90 - 180.0 / count;
            Place hole = BoltCircle.full(count, 1, new Place(0, 0), Math.toRadians(start))
                    .places()
                    .get((int) row.number("hole") - 1);
            assertThat(hole.x()).isCloseTo(row.number("x_centre"), within(6e-7));
            assertThat(hole.y()).isCloseTo(row.number("y_centre"), within(6e-7));
            assertThat(0.5 + hole.x()).isCloseTo(row.number("x_corner"), within(6e-7));
            assertThat(0.5 - hole.y()).isCloseTo(row.number("y_corner"), within(6e-7));
        }
        assertThat(holes()).hasSizeGreaterThan(590);
    }

    @ParameterizedTest
    @MethodSource("tips")
    void a_tip_touches_half_its_diameter_from_the_face(CsvRows.Row row) {
        double tip = Double.parseDouble(row.text("tip").split(" ")[0]);
        assertThat(EdgeFind.LESSER.kernel().applyAsDouble(new double[] {0, tip, 0}))
                .isEqualTo(row.number("offset"));
        assertThat(EdgeFind.GREATER.kernel().applyAsDouble(new double[] {0, tip, 0}))
                .isEqualTo(-row.number("offset"));
    }

    /** The table has 0.02 or 0.05 for one screw: each with its count. */
    @ParameterizedTest
    @MethodSource("dials")
    void a_dial_has_whole_divisions_and_one_of_them_less_is_the_last(CsvRows.Row row) {
        BigDecimal perTurn = new BigDecimal(row.text("per_rev"));
        String[] graduations = row.text("graduation").split(" or ");
        String[] counts = row.text("divisions").split(" or ");
        for (int i = 0; i < graduations.length; i++) {
            BigDecimal graduation = new BigDecimal(graduations[i]);
            Dial dial = new Dial(perTurn, graduation);
            assertThat(dial.move(perTurn).turns()).isEqualTo(1);
            assertThat(dial.move(perTurn).divisions()).isEqualByComparingTo(BigDecimal.ZERO);
            assertThat(dial.move(perTurn.subtract(graduation)).divisions().intValueExact())
                    .isEqualTo(Integer.parseInt(counts[i]) - 1);
        }
        assertThatThrownBy(() -> new Dial(perTurn, perTurn.add(BigDecimal.ONE))).hasMessageContaining("divisions");
        assertThat(Arrays.asList(graduations)).isNotEmpty();
    }
}
