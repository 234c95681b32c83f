package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Standing;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.Seats;

/** Draws a job up in one fixed pass: side up, holding, packing, order, cutter, holder, stick-out, depth, speed, knee. */
public final class Pencil {
    private final Drafting drafting;

    private Pencil(Drafting drafting) {
        this.drafting = drafting;
    }

    public static DrawnUp drawUp(Job job, Rows rows) {
        Pencil pencil = new Pencil(new Drafting(job, rows));
        List<DrawnSetUp> drawn = new ArrayList<>();
        for (SetUp setUp : job.plan().setUps()) {
            drawn.add(pencil.drawUp(setUp, Standing.INKED));
        }
        for (SetUp missing : pencil.missingSetUps()) {
            drawn.add(pencil.drawUp(missing, Standing.PENCILLED));
        }
        return new DrawnUp(job, drawn);
    }

    /** A set-up for every side with features that no written set-up has up. */
    private List<SetUp> missingSetUps() {
        List<SetUp> missing = new ArrayList<>();
        List<SetUp> written = drafting.job().plan().setUps();
        for (Side side : new OperationsPencil(drafting).sides()) {
            if (written.stream().noneMatch(setUp -> sideUp(setUp).value() == side)) {
                String id = "s" + (written.size() + missing.size() + 1);
                missing.add(new SetUp(
                        id,
                        title(side),
                        Plannable.inked(side),
                        0,
                        ViseHolding.pencilled(),
                        ZeroFinding.EDGES,
                        List.of()));
            }
        }
        return missing;
    }

    private static String title(Side side) {
        String word = side.name().toLowerCase(java.util.Locale.ROOT);
        return Character.toUpperCase(word.charAt(0)) + word.substring(1) + " side up";
    }

    private Drawn<Side> sideUp(SetUp setUp) {
        return Drawn.of(
                setUp.up(),
                () -> setUp.operations().stream()
                        .flatMap(operation -> operation.features().stream())
                        .flatMap(id -> drafting.feature(id).stream())
                        .map(feature -> feature.side())
                        .findFirst()
                        .orElse(Side.TOP));
    }

    private DrawnSetUp drawUp(SetUp setUp, Standing standing) {
        Drawn<Side> up = sideUp(setUp);
        DrawnHolding holding = switch (setUp.holding().kind()) {
            case VISE -> new HoldingPencil(drafting).vise(setUp, up.value());
        };
        Optional<Heights> heights =
                Seats.of(drafting.job(), up.value(), setUp.quarterTurns(), holding, drafting.rows());
        OperationPencil pencil = new OperationPencil(drafting, heights);
        List<DrawnOperation> operations = new ArrayList<>();
        for (Operation operation : new OperationsPencil(drafting).complete(setUp, up.value())) {
            boolean written = setUp.operations().contains(operation);
            operations.add(pencil.drawUp(operation, written ? Standing.INKED : Standing.PENCILLED));
        }
        DrawnSetUp drawn = new DrawnSetUp(
                setUp.id(), setUp.title(), standing, up, setUp.quarterTurns(), holding, setUp.datum(), operations);
        return heights.map(found -> withKnee(drawn, found)).orElse(drawn);
    }

    private DrawnSetUp withKnee(DrawnSetUp setUp, Heights heights) {
        Map<String, Double> knee = new KneePencil(drafting.rows()).choose(setUp, heights);
        List<DrawnOperation> operations = setUp.operations().stream()
                .map(operation -> {
                    Double height = knee.get(operation.id());
                    boolean open = operation.kneeHeight().pencilled();
                    return height == null || !open ? operation : operation.atKnee(drafting.length(height));
                })
                .toList();
        return setUp.withOperations(operations);
    }
}
