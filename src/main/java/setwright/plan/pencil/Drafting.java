package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Drawn;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.plan.Rows;
import setwright.plan.part.Holes;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** What every step of the pencil starts from: the job, its rows, and how it writes values down. */
record Drafting(Job job, Rows rows) {
    /** A depth rounded up to what is set and written: 0.05 mm or a thousandth of an inch, so that no sliver is left. */
    double roundedUp(double mm) {
        double step = job.plan().units() == UnitSystem.METRIC ? 0.05 : 0.0254;
        return Math.ceil(mm / step - 1e-9) * step;
    }

    /** What one sets by a rule, mm: a millimetre, a sixteenth of an inch. */
    double settable() {
        return job.plan().units() == UnitSystem.METRIC ? 1 : 25.4 / 16;
    }

    /** A length rounded up to what one sets by a rule, mm. */
    double set(double mm) {
        return Math.ceil(mm / settable() - 1e-9) * settable();
    }

    /** A pencilled length: written as the job's units print it, and exactly what that text says. */
    Typed<Length> length(double mm) {
        return reading().length(text(Measure.LENGTH, mm));
    }

    Typed<Angle> angle(double rad) {
        return reading().angle(text(Measure.ANGLE, rad));
    }

    Typed<Torque> torque(double nmm) {
        return reading().torque(text(Measure.TORQUE, nmm));
    }

    Typed<Time> time(double s) {
        return reading().time(text(Measure.TIME, s));
    }

    Typed<SpindleSpeed> speed(double radPerS) {
        String text = text(Measure.SPINDLE_SPEED, radPerS);
        return new Typed<>(text, new SpindleSpeed(reading().inside(Measure.SPINDLE_SPEED, text)));
    }

    Typed<Speed> feed(double mmPerS) {
        String text = text(Measure.FEED, mmPerS);
        return new Typed<>(text, new Speed(reading().inside(Measure.FEED, text)));
    }

    Optional<Feature> feature(String id) {
        return job.plan().features().stream()
                .filter(feature -> feature.id().equals(id))
                .findFirst();
    }

    /** The hole of that id; empty where it is none. */
    Optional<Hole> hole(String id) {
        return feature(id).flatMap(Holes::hole);
    }

    Optional<Face> face(String id) {
        return feature(id).filter(Face.class::isInstance).map(Face.class::cast);
    }

    /** The cutters that are written down for a step of a hole. */
    Stream<String> written(Operation.Kind kind, Hole hole) {
        return job.plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .filter(operation ->
                        operation.kind() == kind && operation.features().contains(hole.id()))
                .map(Operation::cutter)
                .filter(cutter -> cutter.standing() != Standing.PENCILLED)
                .map(cutter -> Drawn.of(cutter, () -> "").value());
    }

    List<Feature> on(Side side) {
        return job.plan().features().stream()
                .filter(feature -> feature.side() == side)
                .toList();
    }

    /** The box around the blank. */
    Block block() {
        return job.plan().blank().envelope();
    }

    private Reading reading() {
        return new Reading(job.plan().units());
    }

    private String text(Measure measure, double inside) {
        return new Printing(job.plan().units()).of(measure, inside);
    }
}
