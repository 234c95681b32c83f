package setwright.window.state;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What a person set for every job.
 *
 * @param shop folder of the shop; null where it is looked for beside the job
 * @param workingFolder where the program was started
 * @param person name that stands under acceptances and signatures; may be empty
 * @param look name of the look
 */
public record Settings(@Nullable Path shop, Path workingFolder, String person, String look) {
    public Settings withPerson(String changed) {
        return new Settings(shop, workingFolder, changed, look);
    }

    public Settings withLook(String changed) {
        return new Settings(shop, workingFolder, person, changed);
    }
}
