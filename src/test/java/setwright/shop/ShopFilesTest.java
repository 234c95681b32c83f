package setwright.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The files of the shop folder are kept as they should be, and their rows know each other. */
class ShopFilesTest {
    /** Nobody has hung a hammer and an accelerometer on a tool here yet. */
    private static final String MEASURED_ONLY = "tap-test";

    private static final PlainShop SHOP = PlainShop.read();

    static List<Path> files() {
        try (Stream<Path> files = Files.list(PlainShop.FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void each_row_has_a_line_of_its_own(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        assertThat(lines.get(0)).isEqualTo("{\"format\": \"setwright shop\", \"version\": 1, \"rows\": [");
        assertThat(lines.get(lines.size() - 1)).isEqualTo("]}");
        assertThat(lines.subList(1, lines.size() - 1))
                .hasSameSizeAs(PlainShop.written(file))
                .allMatch(line -> line.startsWith("{\"kind\": "));
    }

    @ParameterizedTest
    @MethodSource("files")
    void the_rows_of_a_file_are_sorted_by_id(Path file) {
        assertThat(PlainShop.written(file)).extracting(PlainRow::id).isSortedAccordingTo(Comparator.naturalOrder());
    }

    @Test
    void every_row_has_the_shape_of_its_record() {
        assertThat(SHOP.all()).flatExtracting(RecordShape::faults).isEmpty();
    }

    @Test
    void an_id_is_a_slug() {
        assertThat(SHOP.all()).extracting(PlainRow::id).allMatch(id -> id.matches("[a-z0-9]+([.-][a-z0-9]+)*"));
    }

    @Test
    void no_two_rows_have_one_name() {
        assertThat(SHOP.all()).extracting(row -> row.text("name")).doesNotHaveDuplicates();
    }

    @Test
    void the_shop_has_five_machines_and_a_row_of_every_kind() {
        assertThat(SHOP.all()).hasSizeGreaterThan(1000);
        assertThat(SHOP.ofKind("machine"))
                .extracting(machine -> machine.text("taper"))
                .containsExactlyInAnyOrder("r8", "r8", "iso-30", "morse-3", "odd");
        assertThat(RecordShape.kinds())
                .filteredOn(kind -> !kind.equals(MEASURED_ONLY))
                .allSatisfy(kind -> assertThat(SHOP.ofKind(kind)).as(kind).isNotEmpty());
    }

    @Test
    void every_thing_has_a_place_and_somebody_counted_most_of_them() {
        List<Map<?, ?>> kept = SHOP.all().stream()
                .filter(row -> row.keys().containsKey("kept"))
                .<Map<?, ?>>map(row -> (Map<?, ?>) row.value("kept"))
                .toList();
        assertThat(kept).hasSizeGreaterThan(700).allSatisfy(where -> {
            assertThat(where.get("place").toString()).hasSizeGreaterThan(5);
            assertThat((Integer) where.get("owned")).isGreaterThanOrEqualTo(-1);
        });
        assertThat(kept).anyMatch(where -> where.get("owned").equals(0));
        assertThat(kept).anyMatch(where -> where.get("owned").equals(-1));
    }

    @Test
    void the_shop_has_every_style_of_holder_and_every_series_of_drill() {
        for (Holder.Style style : Holder.Style.values()) {
            assertThat(SHOP.ofKind("holder"))
                    .as("%s", style)
                    .anyMatch(row -> written(style).equals(row.text("style")));
        }
        for (Drill.Series series : Drill.Series.values()) {
            assertThat(SHOP.ofKind("drill"))
                    .as("%s", series)
                    .anyMatch(row -> written(series).equals(row.text("series")));
        }
        for (Strap.Form form : Strap.Form.values()) {
            assertThat(SHOP.ofKind("strap"))
                    .as("%s", form)
                    .anyMatch(row -> written(form).equals(row.text("form")));
        }
        assertThat(SHOP.ofKind("material")).hasSizeGreaterThanOrEqualTo(25);
    }

    private static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** One diameter comes on several shanks, with two flutes and with four, cutting at the centre or not. */
    @Test
    void a_half_inch_and_a_twelve_millimetre_end_mill_come_in_several_kinds() {
        for (String size : List.of("12 mm", "1/2 in")) {
            List<PlainRow> mills = SHOP.ofKind("end-mill").stream()
                    .filter(mill -> mill.text("diameter").equals(size))
                    .toList();
            assertThat(mills).extracting(mill -> mill.value("teeth")).contains(2, 4);
            assertThat(mills).extracting(mill -> mill.value("centreCutting")).contains(true, false);
            assertThat(mills).extracting(mill -> mill.text("material")).contains("hss", "carbide");
        }
    }

    @Test
    void every_material_has_a_speed_for_each_form_that_others_cut_like() {
        Set<String> asked = new TreeSet<>();
        for (PlainRow material : SHOP.ofKind("material")) {
            for (String pair : List.of(
                    "end-mill-hss",
                    "end-mill-carbide",
                    "face-mill-hss",
                    "face-mill-carbide",
                    "drill-hss",
                    "spot-drill-hss",
                    "reamer-hss",
                    "tap-hss")) {
                asked.add("speed-" + material.id() + "-" + pair);
            }
        }
        assertThat(SHOP.ofKind("cutting-speed")).extracting(PlainRow::id).containsAll(asked);
    }

    @Test
    void every_row_says_where_its_numbers_come_from() {
        assertThat(SHOP.all()).extracting(row -> row.text("source")).allMatch(source -> source.length() > 20);
    }

    @Test
    void a_name_leads_to_one_material_only() {
        Stream<String> names = SHOP.ofKind("material").stream()
                .flatMap(row -> Stream.concat(
                        Stream.of(row.id(), row.text("name")),
                        ((List<?>) row.value("calledToo")).stream().map(Object::toString)));
        assertThat(names.map(name -> name.toLowerCase(Locale.ROOT))).doesNotHaveDuplicates();
    }

    @Test
    void every_cutting_speed_is_of_a_material_the_shop_has() {
        Set<String> materials = new TreeSet<>();
        SHOP.ofKind("material").forEach(row -> materials.add(row.id()));
        assertThat(SHOP.ofKind("cutting-speed"))
                .extracting(row -> row.text("material"))
                .isSubsetOf(materials);
    }

    @Test
    void a_cutting_speed_is_not_faster_than_its_upper_end_and_its_feeds_go_by_diameter() {
        for (PlainRow row : SHOP.ofKind("cutting-speed")) {
            assertThat(row.in("m/min", "speed")).as(row.id()).isLessThan(row.in("m/min", "speedHigh"));
            assertThat((List<?>) row.value("feeds"))
                    .as(row.id())
                    .extracting(at ->
                            PlainRow.quantity(((Map<?, ?>) at).get("diameter").toString(), "mm"))
                    .isSorted();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"mild-steel", "unknown-steel", "steel-c45", "grey-iron", "aluminium-6061"})
    void the_common_materials_have_a_speed_for_every_cutter_that_the_shop_owns(String material) {
        Set<String> asked = new TreeSet<>();
        for (PlainRow row : SHOP.all()) {
            if (row.keys().containsKey("teeth")) {
                asked.add("speed-" + material + "-" + written(form(row).cutsLike()) + "-" + row.text("material"));
            }
        }
        assertThat(SHOP.ofKind("cutting-speed")).extracting(PlainRow::id).containsAll(asked);
    }

    @Test
    void every_cutter_can_be_held() {
        List<PlainRow> holders = SHOP.ofKind("holder");
        for (PlainRow row : SHOP.all()) {
            if (row.keys().containsKey("teeth")) {
                assertThat(holders).as(row.id()).anyMatch(holder -> holds(holder, row));
            }
        }
    }

    private static Cutter.Form form(PlainRow cutter) {
        return Cutter.Form.valueOf(cutter.kind().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** What a cutter without an ordinary shank sits on; the other cutters go into what is left. */
    private static final Map<String, String> SEATS = Map.of(
            "face-mill", "face-mill-arbor",
            "shell-mill", "shell-mill-arbor",
            "slitting-saw", "stub-arbor",
            "form-cutter", "stub-arbor",
            "fly-cutter", "fly-cutter-body",
            "boring-bar", "boring-head");

    private static boolean holds(PlainRow holder, PlainRow cutter) {
        double shank = cutter.mm(cutter.keys().containsKey("bore") ? "bore" : "shank");
        String style = holder.text("style");
        String seat = SEATS.get(cutter.kind());
        return (seat == null ? !SEATS.containsValue(style) : seat.equals(style))
                && holder.mm("shankLeast") <= shank + 1e-9
                && shank <= holder.mm("shankGreatest") + 1e-9
                && (!cutter.kind().equals("end-mill") || !style.startsWith("drill-chuck"));
    }
}
