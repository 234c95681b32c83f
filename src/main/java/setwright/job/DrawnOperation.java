package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Typed;

/** An operation as drawn up; see {@link Operation} for what each value is. */
public record DrawnOperation(
        String id,
        Standing standing,
        Operation.Kind kind,
        List<String> features,
        Drawn<String> cutter,
        Drawn<String> holder,
        Drawn<Typed<Length>> stickOut,
        Drawn<Typed<Length>> depth,
        Drawn<Typed<Length>> width,
        Drawn<Typed<Length>> finish,
        Drawn<Operation.LastPass> lastPass,
        Drawn<Typed<Time>> toolLife,
        Drawn<Operation.Direction> direction,
        Drawn<Operation.Coolant> coolant,
        Drawn<Operation.Method> method,
        Drawn<Typed<SpindleSpeed>> speed,
        Drawn<Typed<Speed>> feed,
        Drawn<Typed<Length>> kneeHeight,
        String reason) {

    public DrawnOperation {
        features = List.copyOf(features);
    }

    /** The same, but so far out, so deep, so wide and so fast. */
    public DrawnOperation taking(
            Drawn<Typed<Length>> out,
            Drawn<Typed<Length>> deep,
            Drawn<Typed<Length>> wide,
            Drawn<Typed<SpindleSpeed>> turning,
            Drawn<Typed<Speed>> fed) {
        return set(out, deep, wide, lastPass, method, turning, fed, kneeHeight);
    }

    /** The same with another last pass. */
    public DrawnOperation lastly(Drawn<Operation.LastPass> other) {
        return set(stickOut, depth, width, other, method, speed, feed, kneeHeight);
    }

    /** The same with another pencilled stick-out. */
    public DrawnOperation out(Typed<Length> length) {
        return taking(new Drawn<>(length, Standing.PENCILLED), depth, width, speed, feed);
    }

    /** The same, pencilled in bites: by the lever, quill back, knee up, and on. */
    public DrawnOperation inBites() {
        var bites = new Drawn<>(Operation.Method.QUILL_IN_BITES, Standing.PENCILLED);
        return set(stickOut, depth, width, lastPass, bites, speed, feed, kneeHeight);
    }

    /** The same with another pencilled knee height. */
    public DrawnOperation atKnee(Typed<Length> height) {
        var knee = new Drawn<>(height, Standing.PENCILLED);
        return set(stickOut, depth, width, lastPass, method, speed, feed, knee);
    }

    private DrawnOperation set(
            Drawn<Typed<Length>> out,
            Drawn<Typed<Length>> deep,
            Drawn<Typed<Length>> wide,
            Drawn<Operation.LastPass> lastly,
            Drawn<Operation.Method> way,
            Drawn<Typed<SpindleSpeed>> turning,
            Drawn<Typed<Speed>> fed,
            Drawn<Typed<Length>> knee) {
        return new DrawnOperation(
                id, standing, kind, features, cutter, holder, out, deep, wide, finish, lastly, toolLife, direction,
                coolant, way, turning, fed, knee, reason);
    }
}
