package setwright.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
    private static final PlainShop SHOP = PlainShop.read();

    static List<Path> files() {
        return Stream.of(
                        "machines",
                        "holders",
                        "cutters",
                        "vises",
                        "parallels",
                        "materials",
                        "cutting-speeds",
                        "friction",
                        "times")
                .map(kind -> PlainShop.FOLDER.resolve(kind + ".json"))
                .toList();
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
    void the_shop_is_large_enough_for_its_first_jobs() {
        assertThat(SHOP.all()).hasSizeGreaterThan(150);
        assertThat(SHOP.ofKind("machine")).hasSize(2);
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
            if (row.keys().containsKey("shankForm")) {
                asked.add("speed-" + material + "-" + row.kind() + "-" + row.text("material"));
            }
        }
        assertThat(SHOP.ofKind("cutting-speed")).extracting(PlainRow::id).containsAll(asked);
    }

    @Test
    void every_cutter_can_be_held() {
        List<PlainRow> holders = SHOP.ofKind("holder");
        for (PlainRow row : SHOP.all()) {
            if (row.keys().containsKey("shankForm")) {
                assertThat(holders).as(row.id()).anyMatch(holder -> holds(holder, row));
            }
        }
    }

    private static boolean holds(PlainRow holder, PlainRow cutter) {
        double shank = cutter.mm("shank");
        boolean faceMill = cutter.kind().equals("face-mill");
        return faceMill == holder.text("style").equals("face-mill-arbor")
                && holder.mm("shankLeast") <= shank + 1e-9
                && shank <= holder.mm("shankGreatest") + 1e-9
                && (!cutter.kind().equals("end-mill") || !holder.text("style").startsWith("drill-chuck"));
    }
}
