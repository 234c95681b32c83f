package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.plan.Rows;
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
        return feature(id).filter(Hole.class::isInstance).map(Hole.class::cast);
    }

    Optional<Face> face(String id) {
        return feature(id).filter(Face.class::isInstance).map(Face.class::cast);
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
