package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.Job;

class SavingTest {
    private static final Job JOB = Samples.bearingBlock();
    private static final Job THIRTEEN = JOB.withPlan(JOB.plan().withNumberOff(13));

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name_the_file() {
        file = folder.resolve("block.setwright.json");
    }

    @Test
    void a_new_file_is_written_and_nothing_else() throws IOException {
        JobFile.save(file, JOB, null);

        assertThat(file).hasContent(JobFile.text(JOB, null));
        assertThat(Files.list(folder)).containsExactly(file);
    }

    @Test
    void the_file_before_is_kept_as_the_one_backup() throws IOException {
        JobFile.save(file, JOB, null);
        JobFile.save(file, THIRTEEN, null);
        assertThat(backup()).hasContent(JobFile.text(JOB, null));

        JobFile.save(file, JOB, Samples.drawnUp());

        assertThat(file).hasContent(JobFile.text(JOB, Samples.drawnUp()));
        assertThat(backup()).hasContent(JobFile.text(THIRTEEN, null));
        assertThat(Files.list(folder)).containsExactlyInAnyOrder(file, backup());
    }

    @Test
    void a_disk_that_fills_up_while_writing_leaves_file_and_backup_as_they_were() throws IOException {
        JobFile.save(file, JOB, null);
        JobFile.save(file, THIRTEEN, null);

        assertThatThrownBy(() -> new Saving(file).write(out -> {
                    out.write("{\"format\": ".getBytes(StandardCharsets.UTF_8));
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage(file + " was not saved: No space left on device. What was there stays as it was; save"
                        + " elsewhere, or make room and save again.");

        unharmed();
    }

    @Test
    void a_taken_name_for_the_new_file_leaves_file_and_backup_as_they_were() throws IOException {
        JobFile.save(file, JOB, null);
        JobFile.save(file, THIRTEEN, null);
        Path taken = Files.createDirectory(folder.resolve("block.setwright.json.saving"));

        assertThatThrownBy(() -> JobFile.save(file, JOB, null))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("was not saved")
                .hasMessageContaining(taken.getFileName().toString());

        assertThat(taken).isDirectory();
        Files.delete(taken);
        unharmed();
    }

    @Test
    void a_backup_that_cannot_be_replaced_leaves_the_file_as_it_was() throws IOException {
        JobFile.save(file, THIRTEEN, null);
        Files.createDirectories(backup().resolve("full"));

        assertThatThrownBy(() -> JobFile.save(file, JOB, null))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("was not saved");

        assertThat(file).hasContent(JobFile.text(THIRTEEN, null));
        assertThat(Files.list(folder)).containsExactlyInAnyOrder(file, backup());
    }

    @Test
    void what_a_broken_save_left_behind_does_not_stop_the_next() throws IOException {
        Files.writeString(folder.resolve("block.setwright.json.saving"), "{\"format\"", StandardCharsets.UTF_8);

        JobFile.save(file, JOB, null);

        assertThat(Files.list(folder)).containsExactly(file);
    }

    @Test
    void a_folder_that_may_not_be_written_to_is_named_and_keeps_its_file() throws IOException {
        JobFile.save(file, JOB, null);
        assumeTrue(posix(folder));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(folder), "whoever may write everywhere cannot be kept out");

        assertThatThrownBy(() -> JobFile.save(file, THIRTEEN, null))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("writing in its folder is not allowed");

        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        assertThat(file).hasContent(JobFile.text(JOB, null));
    }

    @Test
    void a_folder_that_is_not_there_and_a_folder_in_place_of_a_file_are_named() {
        Path nowhere = folder.resolve("none").resolve("block.setwright.json");

        assertThatThrownBy(() -> JobFile.save(nowhere, JOB, null))
                .hasMessage("There is no folder for " + nowhere + "; make it, or save elsewhere.");
        assertThatThrownBy(() -> JobFile.save(folder, JOB, null))
                .hasMessage(folder + " is a folder; save under the name of a file in it.");
    }

    @Test
    void permissions_and_links_to_the_file_outlive_a_save() throws IOException {
        assumeTrue(posix(folder));
        JobFile.save(file, JOB, null);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.setwright.json"), file);

        JobFile.save(link, THIRTEEN, null);

        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent(JobFile.text(THIRTEEN, null));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    private void unharmed() throws IOException {
        assertThat(file).hasContent(JobFile.text(THIRTEEN, null));
        assertThat(backup()).hasContent(JobFile.text(JOB, null));
        assertThat(Files.list(folder)).containsExactlyInAnyOrder(file, backup());
    }

    private Path backup() {
        return folder.resolve("block.setwright.json.backup");
    }

    private static boolean posix(Path path) throws IOException {
        return Files.getFileStore(path).supportsFileAttributeView("posix");
    }
}
