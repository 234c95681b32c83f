package setwright.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Materials, speeds, feeds, friction and hand times beside the tables that they were taken from. */
class ShopMaterialTablesTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final PlainShop SHOP = PlainShop.read();

    @Test
    void the_cutting_force_is_that_of_the_material_group() {
        for (Map<String, String> row : CsvTable.read("cutting-force.csv")) {
            PlainRow material = SHOP.row(row.get("material"));
            assertThat(material.in("N/mm2", "kc11")).as(material.id()).isEqualTo(number(row, "kc11"));
            assertThat(material.in("", "mc")).as(material.id()).isEqualTo(number(row, "mc"));
        }
    }

    @Test
    void the_group_letter_is_that_of_the_row_the_cutting_force_comes_from() {
        for (Map<String, String> row : CsvTable.read("cutting-force.csv")) {
            assertThat(row.get("row").toLowerCase(Locale.ROOT))
                    .startsWith(SHOP.row(row.get("material")).text("group"));
        }
    }

    @Test
    void an_unknown_steel_cuts_as_hard_as_any_steel_of_the_shop() {
        PlainRow unknown = SHOP.row("unknown-steel");
        for (PlainRow material : SHOP.ofKind("material")) {
            if (material.text("group").equals("p")) {
                assertThat(force(material)).as(material.id()).isLessThanOrEqualTo(force(unknown));
                assertThat(material.in("N/mm2", "tapForce")).isLessThanOrEqualTo(unknown.in("N/mm2", "tapForce"));
                assertThat(material.in("", "drillFactor")).isLessThanOrEqualTo(unknown.in("", "drillFactor"));
            }
        }
    }

    /** Force on a square millimetre of a chip 0.05 mm thick, where the milling of small shops lies. */
    private static double force(PlainRow material) {
        return material.in("N/mm2", "kc11") * Math.pow(0.05, -material.in("", "mc"));
    }

    @Test
    void the_tapping_force_is_that_of_the_formula_it_belongs_to() {
        agrees("tapping-force.csv", "material", "N/mm2", "tapForce", "force");
    }

    @Test
    void the_unit_power_is_the_handbooks() {
        agrees("unit-power.csv", "material", "J/mm3", "unitPower", "unit_power");
    }

    @Test
    void the_drill_factor_is_the_handbooks() {
        agrees("drill-factor.csv", "material", "", "drillFactor", "factor");
    }

    private void agrees(String table, String rowColumn, String unit, String key, String column) {
        assertThat(CsvTable.read(table))
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> assertThat(SHOP.row(row.get(rowColumn)).in(unit, key))
                        .as(row.get(rowColumn))
                        .isEqualTo(number(row, column)));
    }

    @Test
    void moduli_lie_within_five_percent_of_a_textbooks() {
        for (Map<String, String> row : CsvTable.read("elastic-modulus.csv")) {
            assertThat(SHOP.row(row.get("material")).in("GPa", "elasticModulus"))
                    .as(row.get("material"))
                    .isCloseTo(number(row, "gpa"), within(0.05 * number(row, "gpa")));
        }
    }

    @Test
    void cutting_speeds_are_those_of_their_table() {
        for (Map<String, String> row : CsvTable.read("cutting-speeds.csv")) {
            PlainRow speed = SHOP.row(row.get("speed_row"));
            if (!row.get("which").equals("upper")) {
                assertThat(speed.in(row.get("unit"), "speed")).as(speed.id()).isCloseTo(number(row, "low"), EXACT);
            }
            if (!row.get("which").equals("lower")) {
                assertThat(speed.in(row.get("unit"), "speedHigh"))
                        .as(speed.id())
                        .isCloseTo(number(row, "high"), EXACT);
            }
        }
    }

    /** US War Dept TM 1-420 p.56: half the speed of drilling. */
    @Test
    void reaming_starts_at_half_the_speed_of_drilling() {
        List<PlainRow> reaming = SHOP.ofKind("cutting-speed").stream()
                .filter(row -> row.text("form").equals("reamer"))
                .toList();
        assertThat(reaming)
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> assertThat(row.in("ft/min", "speed"))
                        .isCloseTo(SHOP.row(row.id().replace("reamer", "drill")).in("ft/min", "speed") / 2, EXACT));
    }

    @Test
    void feeds_lie_in_the_bands_of_their_table() {
        for (Map<String, String> row : CsvTable.read("feeds.csv")) {
            String diameter = row.get("diameter") + " " + row.get("unit");
            List<?> feeds = (List<?>) SHOP.row(row.get("speed_row")).value("feeds");
            assertThat(feeds).as(row.get("speed_row")).anySatisfy(at -> {
                Map<?, ?> pair = (Map<?, ?>) at;
                assertThat(pair.get("diameter")).isEqualTo(diameter);
                assertThat(PlainRow.quantity(pair.get("feed").toString(), row.get("unit")))
                        .isBetween(number(row, "low") - 1e-9, number(row, "high") + 1e-9);
            });
        }
    }

    @Test
    void a_tap_is_fed_by_the_coarse_pitch_of_its_diameter() {
        Map<String, String> pitches = new LinkedHashMap<>();
        for (Map<String, String> row : CsvTable.read("tapping-drills.csv")) {
            if (row.get("unit").equals("mm")) {
                pitches.put(row.get("major").replace(".0", "") + " mm", row.get("pitch") + " mm");
            }
        }
        assertThat(SHOP.ofKind("cutting-speed"))
                .filteredOn(row -> row.text("form").equals("tap"))
                .hasSizeGreaterThan(10)
                .allSatisfy(row -> assertThat((List<?>) row.value("feeds"))
                        .as(row.id())
                        .extracting(at -> ((Map<?, ?>) at).get("diameter") + " " + ((Map<?, ?>) at).get("feed"))
                        .containsExactlyElementsOf(pitches.entrySet().stream()
                                .map(pitch -> pitch.getKey() + " " + pitch.getValue())
                                .toList()));
    }

    @Test
    void friction_is_that_of_its_table() {
        for (Map<String, String> row : CsvTable.read("friction.csv")) {
            PlainRow pair = SHOP.row(row.get("friction_row"));
            if (!row.get("which").equals("upper")) {
                assertThat(pair.in("", "pessimistic")).as(pair.id()).isEqualTo(number(row, "low"));
            }
            if (!row.get("which").equals("lower")) {
                assertThat(pair.in("", "high")).as(pair.id()).isEqualTo(number(row, "high"));
            }
        }
    }

    @Test
    void softer_work_grips_by_the_published_factor_of_steel() {
        PlainRow steel = SHOP.row("friction-smooth-jaw-steel");
        for (Map<String, String> row : CsvTable.read("friction-factors.csv")) {
            PlainRow pair = SHOP.row(row.get("friction_row"));
            for (String key : List.of("pessimistic", "expected", "high")) {
                assertThat(pair.in("", key))
                        .as(pair.id() + " " + key)
                        .isCloseTo(steel.in("", key) * number(row, "factor"), within(0.0005));
            }
        }
    }

    @Test
    void friction_is_a_band_with_its_expected_value_inside() {
        for (PlainRow pair : SHOP.ofKind("friction")) {
            assertThat(pair.in("", "expected"))
                    .as(pair.id())
                    .isBetween(pair.in("", "pessimistic"), pair.in("", "high"));
        }
    }

    @Test
    void a_hand_time_is_the_middle_of_its_band() {
        for (Map<String, String> row : CsvTable.read("hand-times.csv")) {
            assertThat(SHOP.row(row.get("time_row")).in(row.get("unit"), "time"))
                    .as(row.get("time_row"))
                    .isCloseTo((number(row, "low") + number(row, "high")) / 2, EXACT);
        }
    }

    private static double number(Map<String, String> row, String column) {
        return PlainRow.number(row.get(column));
    }
}
