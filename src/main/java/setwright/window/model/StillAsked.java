package setwright.window.model;

import java.util.List;
import java.util.stream.Collectors;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Job;
import setwright.job.Standing;

/** Says what comes back in pencil after it was deleted, because the drawing still asks for it. */
public final class StillAsked {
    private StillAsked() {}

    /** Empty where nothing comes back. */
    public static String said(Planned before, Job changed, List<DrawnOperation> deleted) {
        Planned after = new Planned(changed, before.evaluated());
        List<DrawnOperation> back = after.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .filter(operation -> operation.standing() == Standing.PENCILLED)
                .filter(operation -> deleted.stream().anyMatch(gone -> asksFor(gone, operation)))
                .toList();
        if (back.isEmpty()) {
            return "";
        }
        String names = back.stream().map(after.words()::brief).distinct().collect(Collectors.joining("; "));
        String where = after.drawnUp().setUps().stream()
                .filter(setUp -> back.stream().anyMatch(setUp.operations()::contains))
                .map(DrawnSetUp::title)
                .distinct()
                .collect(Collectors.joining(", "));
        return "Back in pencil, for the drawing still asks for it: " + names + " (" + where + ").";
    }

    private static boolean asksFor(DrawnOperation gone, DrawnOperation operation) {
        return gone.kind() == operation.kind() && operation.features().stream().anyMatch(gone.features()::contains);
    }
}
