package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the job finds at the machine.
 *
 * @param machine id of the machine's row
 * @param clockedIn ids of the devices that are bolted on and clocked in now
 * @param headTrammed date of the last tramming of the head; null where nobody knows
 */
public record MachineAsItStands(
        String machine, List<String> clockedIn, @Nullable String headTrammed) {
    public MachineAsItStands {
        clockedIn = List.copyOf(clockedIn);
    }
}
