package setwright.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where to look for the shop, first to last.
 *
 * @param asked the folder that was named in the command; null where none was
 * @param settings the folder named in the settings; null where none is
 * @param jobFolder the folder that the job is in; null for a job without a file
 * @param workingFolder the folder that the program was started in
 */
public record ShopPlace(
        @Nullable Path asked,
        @Nullable Path settings,
        @Nullable Path jobFolder,
        Path workingFolder) {

    private static final String SHARED = "shared";

    /** The folder of the shop; empty: the shop that is packed with the program. A folder that was named is not doubted. */
    public Optional<Path> folder() {
        if (asked != null) {
            return Optional.of(asked);
        }
        if (settings != null) {
            return Optional.of(settings);
        }
        return Stream.concat(Stream.ofNullable(jobFolder), Stream.of(workingFolder))
                .map(folder -> folder.resolve(SHARED))
                .filter(folder -> Files.isRegularFile(folder.resolve(ShopFolder.MACHINES)))
                .findFirst();
    }

    public ShopRead read() {
        return folder().map(ShopFolder::read).orElseGet(ShopFolder::packed);
    }
}
