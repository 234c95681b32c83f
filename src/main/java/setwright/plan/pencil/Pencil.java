package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.DeviceHolding;
import setwright.job.Drawn;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Holding;
import setwright.job.Ids;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Standing;
import setwright.job.TableHolding;
import setwright.job.UndecidedHolding;
import setwright.job.ZeroFinding;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.Laid;
import setwright.plan.part.MadeFrom;
import setwright.plan.part.Seats;
import setwright.plan.part.StartHeight;

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
            drawn.add(pencil.drawUp(setUp, Standing.INKED, upBefore(drawn)));
        }
        for (SetUp missing : pencil.missingSetUps()) {
            drawn.add(pencil.drawUp(missing, Standing.PENCILLED, upBefore(drawn)));
        }
        return new DrawnUp(job, drawn);
    }

    /** A set-up for every side with features that no written set-up has up. */
    private List<SetUp> missingSetUps() {
        List<SetUp> missing = new ArrayList<>();
        List<String> ids = new ArrayList<>(
                drafting.job().plan().setUps().stream().map(SetUp::id).toList());
        List<SetUp> written = drafting.job().plan().setUps();
        for (Side side : sides(written)) {
            if (written.stream().noneMatch(setUp -> sideUp(setUp).value() == side)) {
                String id = Ids.setUp(ids);
                ids.add(id);
                missing.add(new SetUp(
                        id,
                        SetUp.title(side),
                        Plannable.inked(side),
                        HoldingChoice.alongTable(drafting.block(), side),
                        new UndecidedHolding(),
                        ZeroFinding.EDGES,
                        List.of()));
            }
        }
        return missing;
    }

    /** A bare blank stands there with its top up, so that it is seen before the first note. */
    private List<Side> sides(List<SetUp> written) {
        List<Side> carrying = new OperationsPencil(drafting).sides();
        return carrying.isEmpty() && written.isEmpty() ? List.of(Side.TOP) : carrying;
    }

    private Drawn<Side> sideUp(SetUp setUp) {
        return Drawn.of(setUp.up(), () -> sideUp(drafting, setUp));
    }

    /** The side that a person wrote, else that of the first feature. */
    static Side sideUp(Drafting drafting, SetUp setUp) {
        return Drawn.of(
                        setUp.up(),
                        () -> setUp.operations().stream()
                                .flatMap(operation -> operation.features().stream())
                                .flatMap(id -> drafting.feature(id).stream())
                                .map(feature -> MadeFrom.up(feature, drafting.job()))
                                .findFirst()
                                .orElse(Side.TOP))
                .value();
    }

    private static List<Side> upBefore(List<DrawnSetUp> drawn) {
        return drawn.stream().map(setUp -> setUp.up().value()).toList();
    }

    /**
     * The first set-up with a side up gets what is missing there.
     *
     * @param earlier sides that were up in the set-ups before this one
     */
    private DrawnSetUp drawUp(SetUp setUp, Standing standing, List<Side> earlier) {
        Drawn<Side> up = sideUp(setUp);
        boolean completes = !earlier.contains(up.value());
        DrawnHolding holding = holding(setUp, up.value());
        Laid laid = new Laid(up.value(), setUp.quarterTurns(), setUp.tilt());
        Optional<Heights> heights = Seats.of(drafting.job(), laid, holding, drafting.rows())
                .map(seat ->
                        laid.tilted() ? seat : seat.startingAt(StartHeight.of(drafting.job(), earlier, up.value())));
        OperationPencil pencil = new OperationPencil(drafting, up.value(), heights);
        List<DrawnOperation> operations = new ArrayList<>();
        List<Operation> all =
                completes ? new OperationsPencil(drafting).complete(setUp, up.value()) : setUp.operations();
        for (Operation operation : all) {
            boolean written = setUp.operations().contains(operation);
            operations.add(
                    pencil.drawUp(operation, written ? Standing.INKED : Standing.PENCILLED, List.copyOf(operations)));
        }
        DrawnSetUp drawn = new DrawnSetUp(
                setUp.id(),
                setUp.title(),
                standing,
                up,
                setUp.quarterTurns(),
                holding,
                setUp.datum(),
                setUp.tilt(),
                operations);
        return heights.map(found -> new KneePencil(drafting).set(drawn, found)).orElse(drawn);
    }

    private DrawnHolding holding(SetUp setUp, Side up) {
        Holding wanted = new HoldingChoice(drafting).decided(setUp, up);
        return switch (wanted.kind()) {
            case VISE, UNDECIDED -> new HoldingPencil(drafting).vise(setUp, up);
            case TABLE -> new TablePencil(drafting, setUp, up).table((TableHolding) wanted);
            case DEVICE -> new TablePencil(drafting, setUp, up).device((DeviceHolding) wanted);
        };
    }
}
