package setwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.shop.Shop;

/** What the program brings with it: the shop in {@code shared} and the jobs in {@code demo-jobs}. */
class PackedTest {
    @Test
    void the_packed_shop_is_the_one_in_the_folder() {
        assertThat(shop().rows()).isNotEmpty();
        assertThat(opened(ShopFolder.read(Path.of("shared"))).rows()).isEqualTo(shop().rows());
    }

    @ParameterizedTest
    @MethodSource("shopFiles")
    void every_file_of_the_shop_fits_its_schema(Path file) throws IOException {
        assertThat(SchemaTest.errors(Schema.SHOP, Files.readString(file, UTF_8)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void every_demonstration_job_opens_without_a_note_and_fits_its_schema(Path file) throws IOException {
        assertThat(JobFile.read(file, shop()))
                .isInstanceOfSatisfying(
                        JobRead.Opened.class,
                        opened -> assertThat(opened.notes()).isEmpty());
        assertThat(SchemaTest.errors(Schema.JOB, Files.readString(file, UTF_8))).isEmpty();
    }

    static List<Path> shopFiles() throws IOException {
        return json(Path.of("shared"));
    }

    static List<Path> jobs() throws IOException {
        return json(Path.of("demo-jobs"));
    }

    private static List<Path> json(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private static Shop shop() {
        return opened(ShopFolder.packed());
    }

    private static Shop opened(ShopRead read) {
        assertThat(read).isInstanceOf(ShopRead.Opened.class);
        return ((ShopRead.Opened) read).shop();
    }
}
