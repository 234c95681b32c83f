package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnStrap;
import setwright.job.DrawnUp;
import setwright.job.HoldingEdits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.StrapPlace;
import setwright.plan.part.TableSlots;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.quantity.thread.Threads;
import setwright.shop.MachineTable;
import setwright.shop.Stud;

/** A strap laid otherwise. */
record StrapChanges(Plan plan, String setUp, StrapPlace strap) {
    /** Moved by these steps along the part, mm: those that go least far first. */
    private static final List<Double> STEPS = List.of(-10.0, 10.0, -20.0, 20.0, -40.0, 40.0, -80.0, 80.0);

    /** How far inside the part's edge a pad is set, mm (common practice). */
    private static final double INSIDE = 18;

    /** The strap that a caution is about; empty where it is about none. */
    static Optional<StrapChanges> of(Plan plan, String setUp, String strap) {
        return Strapped.of(plan, Operations.setUp(plan, setUp)).stream()
                .flatMap(in -> in.straps().stream())
                .filter(place -> place.drawn().id().equals(strap))
                .findFirst()
                .map(place -> new StrapChanges(plan, setUp, place));
    }

    /** The strap that a caution names in words, laid so that it is out of the way. */
    static List<Proposal> away(Plan plan, Caution caution) {
        return Strapped.of(plan, Operations.setUp(plan, caution.setUp())).stream()
                .flatMap(in -> in.straps().stream())
                .filter(place -> caution.subjectText().endsWith(place.name()))
                .findFirst()
                .map(place -> new StrapChanges(plan, caution.setUp(), place))
                .map(changes -> Stream.of(changes.elsewhere(), changes.turned(), changes.otherStuds())
                        .flatMap(List::stream)
                        .toList())
                .orElse(List.of());
    }

    private DrawnStrap drawn() {
        return strap.drawn();
    }

    /** The pad well inside the part. */
    List<Proposal> inward() {
        return plan.part().setUp(setUp).map(stage -> inward(stage.heights())).orElse(List.of());
    }

    private List<Proposal> inward(Heights heights) {
        double u = within(drawn().u().value().inside(), heights.length());
        double v = within(drawn().v().value().inside(), heights.depth());
        return List.of(to(u, v));
    }

    private static double within(double now, double whole) {
        double edge = Math.min(INSIDE, whole / 2);
        return Math.max(edge, Math.min(whole - edge, now));
    }

    /** Elsewhere along either edge, the nearest first. */
    List<Proposal> elsewhere() {
        double u = drawn().u().value().inside();
        double v = drawn().v().value().inside();
        List<Proposal> found = new ArrayList<>();
        for (double step : STEPS) {
            found.add(to(u, v + step));
            found.add(to(u + step, v));
        }
        return found;
    }

    /** A strap in the place of an edge clamp or a bolt, where the pencil lays it. */
    List<Proposal> asStrap() {
        Job off = HoldingEdits.deleteStrap(plan.drawnUp(), new HoldingEdits.StrapAt(setUp, drawn().id()));
        Job more = HoldingEdits.addStrap(new DrawnUp(off, plan.drawnUp().setUps()), setUp);
        return List.of(new Proposal(Way.DEVICE, "Take a strap in the place of the " + strap.name() + ".", more));
    }

    /** So that the stud stands over each of the slots, the nearest first, or taken back by the pencil. */
    List<Proposal> overSlots() {
        MachineTable table = plan.rows().machine().table();
        double v = drawn().v().value().inside();
        double stud = strap.studAt().y();
        List<Proposal> found = new ArrayList<>();
        TableSlots.all(table).stream()
                .sorted(Comparator.comparingDouble(line -> Math.abs(line - stud)))
                .forEach(line -> found.add(to(drawn().u().value().inside(), v + line - stud)));
        return found;
    }

    private Proposal to(double u, double v) {
        Typed<Length> right = length(u);
        Typed<Length> back = length(v);
        Job moved = set(plan.drawnUp(), StrapField.U, right);
        Job both = set(new DrawnUp(moved, plan.drawnUp().setUps()), StrapField.V, back);
        return new Proposal(
                Way.PART_PLACE,
                "Set the pad of the " + strap.name() + " to " + right.text() + " from the left and " + back.text()
                        + " from the front " + now() + ".",
                both);
    }

    private String now() {
        return "(now " + drawn().u().value().text() + " and "
                + drawn().v().value().text() + inked() + ")";
    }

    private String inked() {
        return drawn().u().pencilled() && drawn().v().pencilled() ? "" : ", inked";
    }

    /** Turned so that its heel lies another way, a quarter or half round. */
    List<Proposal> turned() {
        List<Proposal> found = new ArrayList<>();
        for (int quarter : new int[] {1, 3, 2}) {
            double toward = drawn().toward().value().inside() + quarter * Math.PI / 2;
            Typed<Angle> angle = words().reading().angle(words().of(Measure.ANGLE, toward % (2 * Math.PI)));
            found.add(new Proposal(
                    Way.PACKING_PLACE,
                    "Set the heel of the " + strap.name() + " toward " + angle.text() + " "
                            + Words.now(drawn().toward()) + ".",
                    set(plan.drawnUp(), StrapField.TOWARD, angle)));
        }
        return found;
    }

    /** Brass under every pad that bears bare. */
    List<Proposal> brass() {
        DrawnUp drawnUp = plan.drawnUp();
        for (DrawnStrap one : HoldingEdits.straps(Operations.setUp(plan, setUp).holding())) {
            if (one.pad().value() == Strapping.Pad.BARE) {
                Job changed = HoldingEdits.set(
                        drawnUp,
                        new HoldingEdits.StrapAt(setUp, one.id()),
                        StrapField.PAD,
                        Plannable.inked(Strapping.Pad.BRASS));
                drawnUp = new DrawnUp(changed, drawnUp.setUps());
            }
        }
        return List.of(new Proposal(Way.PACKING_THICKNESS, "Put brass under the pads.", drawnUp.job()));
    }

    /** The heel as high as the pad. */
    List<Proposal> level() {
        return List.of(new Proposal(
                Way.PACKING_HEIGHT,
                "Set the heel of the " + strap.name() + " level with its pad, with more steps under it "
                        + Words.now(drawn().heelOver()) + ".",
                set(plan.drawnUp(), StrapField.HEEL_OVER, length(0))));
    }

    /** The stud a third of the way from pad to heel. */
    List<Proposal> studNearer() {
        double whole = drawn().padToStud().value().inside()
                + drawn().studToHeel().value().inside();
        Typed<Length> near = length(Math.rint(whole / 3));
        Job first = set(plan.drawnUp(), StrapField.PAD_TO_STUD, near);
        Job both = set(
                new DrawnUp(first, plan.drawnUp().setUps()), StrapField.STUD_TO_HEEL, length(whole - near.inside()));
        return List.of(new Proposal(
                Way.PACKING_PLACE,
                "Set the stud of the " + strap.name() + " " + near.text() + " from its pad "
                        + Words.now(drawn().padToStud()) + ".",
                both));
    }

    /** Other studs that are owned and go through the strap, the longest first. */
    List<Proposal> otherStuds() {
        return plan.rows().all(Stud.class).stream()
                .filter(row -> row.kept().owned() != 0)
                .filter(row -> !row.id().equals(drawn().stud().value()))
                .filter(row -> Threads.listed().read(row.thread()).major() <= widest())
                .sorted(Comparator.comparingDouble((Stud row) -> -longest(row)).thenComparing(Stud::id))
                .map(row -> new Proposal(
                        Way.DEVICE,
                        "Take the " + row.name() + " for the " + strap.name() + " (now "
                                + words().row(drawn().stud().value()) + ").",
                        set(plan.drawnUp(), StrapField.STUD, row.id())))
                .toList();
    }

    /** Width that a stud has in the strap; any where it goes through none. */
    private double widest() {
        return strap.strap().map(row -> row.slotWidth().inside()).orElse(Double.POSITIVE_INFINITY);
    }

    private static double longest(Stud row) {
        return row.lengths().stream().mapToDouble(Typed::inside).max().orElse(0);
    }

    /** Its nut done up with another torque, N·mm. */
    List<Proposal> torque(double inside) {
        Typed<Torque> torque = words().reading().torque(words().of(Measure.TORQUE, inside));
        return List.of(new Proposal(
                Way.GRIP,
                "Set the nut of the " + strap.name() + " to " + torque.text() + " " + Words.now(drawn().torque()) + ".",
                set(plan.drawnUp(), StrapField.TORQUE, torque)));
    }

    private <T> Job set(DrawnUp drawnUp, StrapField<T> field, T value) {
        return HoldingEdits.set(drawnUp, new HoldingEdits.StrapAt(setUp, drawn().id()), field, Plannable.inked(value));
    }

    private Typed<Length> length(double mm) {
        return words().typed(mm);
    }

    private Words words() {
        return new Words(plan);
    }
}
