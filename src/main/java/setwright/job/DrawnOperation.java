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

    /** The same with another pencilled knee height. */
    public DrawnOperation atKnee(Typed<Length> height) {
        return new DrawnOperation(
                id,
                standing,
                kind,
                features,
                cutter,
                holder,
                stickOut,
                depth,
                width,
                finish,
                lastPass,
                toolLife,
                direction,
                coolant,
                method,
                speed,
                feed,
                new Drawn<>(height, Standing.PENCILLED),
                reason);
    }
}
