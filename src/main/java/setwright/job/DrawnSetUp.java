package setwright.job;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;

/**
 * A set-up as drawn up.
 *
 * @param standing inked where a person wrote the set-up down, pencilled where the pencil added it
 */
public record DrawnSetUp(
        String id,
        String title,
        Standing standing,
        Drawn<Side> up,
        int quarterTurns,
        DrawnHolding holding,
        ZeroFinding datum,
        @Nullable Tilt tilt,
        List<DrawnOperation> operations) {

    public DrawnSetUp {
        operations = List.copyOf(operations);
    }

    /** A set-up that is not tilted. */
    public DrawnSetUp(
            String id,
            String title,
            Standing standing,
            Drawn<Side> up,
            int quarterTurns,
            DrawnHolding holding,
            ZeroFinding datum,
            List<DrawnOperation> operations) {
        this(id, title, standing, up, quarterTurns, holding, datum, null, operations);
    }

    public Optional<DrawnOperation> operation(String id) {
        return operations.stream()
                .filter(operation -> operation.id().equals(id))
                .findFirst();
    }

    public DrawnSetUp withOperations(List<DrawnOperation> changed) {
        return new DrawnSetUp(id, title, standing, up, quarterTurns, holding, datum, tilt, changed);
    }
}
