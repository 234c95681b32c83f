package setwright.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Cutters, holders, vises and machines beside the tables that they were taken from. Each table names its source row by
 * row; lengths recalled from memory are held, beyond that, against the arithmetic of their standard.
 */
class ShopTablesTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final PlainShop SHOP = PlainShop.read();

    @Test
    void end_mills_have_the_lengths_of_their_standard() {
        List<Map<String, String>> table = CsvTable.read("end-mills.csv");
        for (PlainRow mill : SHOP.ofKind("end-mill")) {
            assertThat(table).as(mill.id()).anyMatch(row -> isEndMill(row, mill));
        }
    }

    private static boolean isEndMill(Map<String, String> row, PlainRow mill) {
        String unit = row.get("unit");
        return same(mill, "diameter", row, "diameter", unit)
                && same(mill, "shank", row, "shank", unit)
                && same(mill, "fluteLength", row, "flute", unit)
                && same(mill, "overallLength", row, "overall", unit)
                && row.get("material").equalsIgnoreCase(mill.text("material"))
                && (row.get("teeth").equals("2-4")
                        || row.get("teeth").equals(mill.value("teeth").toString()));
    }

    private static boolean same(PlainRow shop, String key, Map<String, String> row, String column, String unit) {
        return Math.abs(shop.in(unit, key) - PlainRow.number(row.get(column))) < 1e-6;
    }

    /** Overall less flute is one length for one shank in DIN 844 and DIN 327: 44, 50, 57, 60, 66, 76 mm. */
    @Test
    void behind_the_flutes_of_metric_hss_end_mills_of_one_shank_is_one_length() {
        Map<Double, Double> behind = new TreeMap<>(Map.of(6.0, 44.0, 10.0, 50.0, 12.0, 57.0, 16.0, 60.0, 20.0, 66.0));
        behind.put(25.0, 76.0);
        behind.put(32.0, 80.0);
        List<PlainRow> metric = SHOP.ofKind("end-mill").stream()
                .filter(mill -> mill.text("shank").endsWith("mm"))
                .filter(mill -> mill.text("material").equals("hss"))
                .toList();
        assertThat(metric)
                .hasSizeGreaterThan(15)
                .allSatisfy(mill -> assertThat(mill.mm("overallLength") - mill.mm("fluteLength"))
                        .as(mill.id())
                        .isCloseTo(behind.get(mill.mm("shank")), EXACT));
    }

    @Test
    void metric_drills_have_the_lengths_of_their_series() {
        List<PlainRow> metric = SHOP.ofKind("drill").stream()
                .filter(drill -> drill.text("diameter").endsWith("mm"))
                .filter(drill -> METRIC_SERIES.containsKey(drill.text("series")))
                .toList();
        assertThat(metric).hasSizeGreaterThan(40);
        for (PlainRow drill : metric) {
            String series = METRIC_SERIES.get(drill.text("series"));
            Map<String, String> row = drillRow(series, drill.mm("diameter"));
            assertThat(drill.mm("fluteLength")).as(drill.id()).isCloseTo(PlainRow.number(row.get("flute")), EXACT);
            assertThat(drill.mm("overallLength")).as(drill.id()).isCloseTo(PlainRow.number(row.get("overall")), EXACT);
            if (!drill.text("series").equals("taper-shank")) {
                assertThat(drill.mm("shank")).as(drill.id()).isCloseTo(drill.mm("diameter"), EXACT);
            }
        }
    }

    private static final Map<String, String> METRIC_SERIES =
            Map.of("stub", "DIN 1897 stub", "jobber", "DIN 338 / ISO 235 jobber", "taper-shank", "DIN 345 taper shank");

    /** The first Morse numbers of DIN 345 end at 14, 23.02 and 31.75 mm of drill. */
    @Test
    void a_taper_shank_drill_has_the_morse_number_of_its_size() {
        assertThat(SHOP.ofKind("drill"))
                .filteredOn(drill -> drill.text("series").equals("taper-shank"))
                .hasSizeGreaterThan(10)
                .allSatisfy(drill -> {
                    double diameter = drill.mm("diameter");
                    double gauge = diameter <= 14 ? 0.4750 : diameter <= 23.02 ? 0.7000 : 0.9380;
                    assertThat(drill.in("in", "shank")).as(drill.id()).isCloseTo(gauge, within(0.0002));
                });
    }

    @Test
    void spot_drills_have_the_lengths_of_stub_drills() {
        assertThat(SHOP.ofKind("spot-drill")).hasSize(6).allSatisfy(drill -> {
            Map<String, String> row = drillRow("DIN 1897 stub", drill.mm("diameter"));
            assertThat(drill.mm("overallLength")).isCloseTo(PlainRow.number(row.get("overall")), EXACT);
        });
    }

    private static Map<String, String> drillRow(String series, double diameter) {
        return CsvTable.read("drills.csv").stream()
                .filter(row -> row.get("series").equals(series))
                .filter(row ->
                        PlainRow.number(row.get("over")) < diameter && diameter <= PlainRow.number(row.get("to")))
                .findFirst()
                .orElseThrow(() -> new AssertionError(series + " has no row for " + diameter));
    }

    /** Catalogues measure inch drills to the shoulder, the shop to the tip: 0.3004 of the diameter more at 118°. */
    @Test
    void fraction_drills_are_longer_than_their_catalogue_length_by_the_point() {
        List<PlainRow> fractions = SHOP.ofKind("drill").stream()
                .filter(drill -> drill.text("diameter").contains("/"))
                .filter(drill -> !drill.text("series").equals("reduced-shank"))
                .toList();
        assertThat(fractions).hasSizeGreaterThan(40);
        for (PlainRow drill : fractions) {
            String series = "ASME B94.11M " + (drill.text("series").equals("stub") ? "screw-machine (stub)" : "jobber");
            Map<String, String> row = CsvTable.read("drills.csv").stream()
                    .filter(one -> one.get("series").equals(series))
                    .filter(one -> one.get("to").equals(drill.text("diameter").replace(" in", "")))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no table for " + drill));
            double point = 0.3004 * drill.in("in", "diameter");
            assertThat(drill.in("in", "fluteLength") - point)
                    .as(drill.id())
                    .isCloseTo(PlainRow.number(row.get("flute")), within(0.001));
            assertThat(drill.in("in", "overallLength") - point)
                    .as(drill.id())
                    .isCloseTo(PlainRow.number(row.get("overall")), within(0.001));
        }
    }

    @Test
    void number_and_letter_drills_have_their_published_diameter() {
        for (Map<String, String> row : CsvTable.read("drill-gauge-sizes.csv")) {
            boolean letter = row.get("series").equals("letter");
            String size = row.get("size");
            PlainRow drill =
                    SHOP.row("drill-hss-jobber-" + (letter ? "letter-" : "no") + size.toLowerCase(Locale.ROOT));
            assertThat(drill.mm("diameter")).isCloseTo(PlainRow.number(row.get("mm")), within(0.0001));
        }
    }

    @Test
    void reamers_have_the_shank_and_lengths_of_their_standard() {
        assertThat(SHOP.ofKind("reamer")).hasSizeGreaterThan(35);
        for (PlainRow reamer : SHOP.ofKind("reamer")) {
            boolean inch = reamer.text("diameter").endsWith(" in");
            boolean taper = reamer.text("shankForm").equals("morse");
            Map<String, String> row = CsvTable.read("reamers.csv").stream()
                    .filter(one -> one.get("kind").equals(inch ? "inch" : taper ? "taper" : "straight"))
                    .filter(one ->
                            one.get("diameter").equals(reamer.text("diameter").replaceAll(" mm| in", "")))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no table for " + reamer));
            String unit = inch ? "in" : "mm";
            assertThat(same(reamer, "fluteLength", row, "flute", unit))
                    .as(reamer.id())
                    .isTrue();
            assertThat(same(reamer, "overallLength", row, "overall", unit))
                    .as(reamer.id())
                    .isTrue();
            assertThat(taper || same(reamer, "shank", row, "shank", unit))
                    .as(reamer.id())
                    .isTrue();
        }
    }

    @Test
    void taps_have_the_shank_and_lengths_of_their_standard() {
        assertThat(SHOP.ofKind("tap")).hasSizeGreaterThan(15);
        for (PlainRow tap : SHOP.ofKind("tap")) {
            boolean metric = tap.text("thread").startsWith("M");
            Map<String, String> row = row(
                    "taps.csv",
                    "size",
                    metric ? tap.text("thread") : tap.text("thread").replaceAll("-\\d+$", ""));
            String unit = metric ? "mm" : "in";
            assertThat(same(tap, "shank", row, "shank", unit)).as(tap.id()).isTrue();
            assertThat(same(tap, "fluteLength", row, "thread", unit))
                    .as(tap.id())
                    .isTrue();
            assertThat(same(tap, "overallLength", row, "overall", unit))
                    .as(tap.id())
                    .isTrue();
        }
    }

    @Test
    void every_tap_has_its_tapping_drill_in_the_shop() {
        for (PlainRow tap : SHOP.ofKind("tap")) {
            Map<String, String> row = row("tapping-drills.csv", "thread", tap.text("thread"));
            String drill = row.get("drill");
            double size = drillSize(drill, row.get("unit"));
            assertThat(SHOP.ofKind("drill"))
                    .as(tap.id())
                    .anyMatch(owned -> Math.abs(owned.in(row.get("unit"), "diameter") - size) < 1e-6);
            assertThat(size)
                    .isBetween(PlainRow.number(row.get("minor_least")), PlainRow.number(row.get("minor_greatest")));
        }
    }

    /** Reads {@code 6.8}, {@code 27/64}, {@code #7} and {@code F}. */
    private static double drillSize(String written, String unit) {
        if (written.matches("[A-Z]")) {
            return PlainRow.number(row("drill-gauge-sizes.csv", "size", written).get("inch"));
        }
        return PlainRow.quantity(written.startsWith("#") ? written : written + " " + unit, unit);
    }

    @Test
    void the_values_that_a_table_prints_are_those_of_the_table() {
        List<Map<String, String>> table = CsvTable.read("published-values.csv");
        assertThat(table).hasSizeGreaterThan(150).allSatisfy(row -> {
            Object value = SHOP.row(row.get("shop_row")).value(row.get("key"));
            double number = value instanceof Integer count ? count : PlainRow.quantity((String) value, row.get("unit"));
            assertThat(number)
                    .as(row.get("shop_row") + " " + row.get("key"))
                    .isCloseTo(PlainRow.number(row.get("value")), within(0.0003));
        });
    }

    @Test
    void studs_come_in_the_lengths_of_their_standard_and_fit_the_slot_of_their_nuts() {
        for (Map<String, String> row : CsvTable.read("studs.csv")) {
            PlainRow stud = SHOP.row(row.get("stud"));
            assertThat((List<?>) stud.value("lengths"))
                    .extracting(length -> length.toString().replace(" mm", ""))
                    .containsExactly(row.get("lengths").split(" "));
            assertThat(SHOP.ofKind("t-nut"))
                    .filteredOn(nut -> nut.text("slotWidth").equals(row.get("slot") + " mm"))
                    .as(stud.id())
                    .anyMatch(nut -> nut.text("thread").equals(stud.text("thread")));
        }
    }

    @Test
    void every_reamer_has_a_drill_in_the_shop_that_leaves_the_published_stock() {
        List<PlainRow> metric = SHOP.ofKind("reamer").stream()
                .filter(reamer -> reamer.text("diameter").endsWith(" mm"))
                .filter(reamer -> reamer.mm("diameter") <= 20)
                .toList();
        for (PlainRow reamer : metric) {
            double diameter = reamer.mm("diameter");
            Map<String, String> row = CsvTable.read("reaming-allowance.csv").stream()
                    .filter(one -> PlainRow.number(one.get("over")) < diameter)
                    .filter(one -> diameter <= PlainRow.number(one.get("to")))
                    .findFirst()
                    .orElseThrow();
            double oversize = PlainRow.number(row.get("drill_oversize"));
            assertThat(SHOP.ofKind("drill")).as(reamer.id()).anyMatch(drill -> {
                double stock = diameter - drill.mm("diameter") - oversize;
                return stock > PlainRow.number(row.get("least")) - 1e-9
                        && stock < PlainRow.number(row.get("greatest")) + 1e-9;
            });
        }
    }

    @Test
    void an_er32_chuck_grips_as_deep_and_as_wide_as_its_collets_allow() {
        Map<String, String> er32 = CsvTable.read("er-collets.csv").get(0);
        for (String id : List.of("collet-chuck-er32-r8", "collet-chuck-er32-30")) {
            PlainRow chuck = SHOP.row(id);
            assertThat(chuck.mm("shankLeast")).isGreaterThanOrEqualTo(PlainRow.number(er32.get("clamp_least")));
            assertThat(chuck.mm("shankGreatest")).isEqualTo(PlainRow.number(er32.get("clamp_greatest")));
            assertThat(chuck.mm("grip"))
                    .isEqualTo(PlainRow.number(er32.get("grip_least")))
                    .isGreaterThanOrEqualTo(2.0 / 3 * PlainRow.number(er32.get("collet_length")));
            assertThat(chuck.mm("noseDiameter")).isEqualTo(PlainRow.number(er32.get("nut_diameter")));
        }
    }

    @Test
    void holders_project_as_far_as_holders_of_their_kind_do() {
        for (Map<String, String> row : CsvTable.read("holder-projections.csv")) {
            assertThat(SHOP.row(row.get("holder")).mm("projection"))
                    .as(row.get("holder"))
                    .isBetween(PlainRow.number(row.get("least")), PlainRow.number(row.get("greatest")));
        }
    }

    @Test
    void machines_and_vises_lie_in_the_bands_of_their_class() {
        for (Map<String, String> row : CsvTable.read("bands.csv")) {
            assertThat(SHOP.row(row.get("shop_row")).in(row.get("unit"), row.get("key")))
                    .as(row.get("shop_row") + " " + row.get("key"))
                    .isBetween(PlainRow.number(row.get("least")) - 1e-9, PlainRow.number(row.get("greatest")) + 1e-9);
        }
    }

    @Test
    void thin_parallels_stand_in_the_heights_of_the_usual_set() {
        for (Map<String, String> row : CsvTable.read("parallels.csv")) {
            assertThat((List<?>) SHOP.row(row.get("parallels")).value("heights"))
                    .extracting(height -> height.toString().replace(" in", ""))
                    .containsExactly(row.get("heights").split(" "));
        }
    }

    private static Map<String, String> row(String table, String column, String text) {
        return CsvTable.read(table).stream()
                .filter(row -> row.get(column).equals(text))
                .findFirst()
                .orElseThrow(() -> new AssertionError(table + " has no " + column + " " + text));
    }
}
