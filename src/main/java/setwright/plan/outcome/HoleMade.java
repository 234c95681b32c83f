package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.part.Holes;

/** How deep a blind hole comes, by the operation that gives it its size. */
record HoleMade(ComesOut.Seen seen) {
    List<Odd> odd() {
        return Holes.hole(seen.feature()).map(this::odd).orElse(List.of());
    }

    private List<Odd> odd(Hole hole) {
        Size depth = hole.depth();
        List<Odd> found = new ArrayList<>();
        if (depth == null) {
            return found;
        }
        Operation.Kind kind = seen.operation().kind();
        if (kind == Operation.Kind.DRILL || kind == Operation.Kind.BORE) {
            double under = seen.stage().lowest() - seen.heights().partBottom();
            found.addAll(seen.tooMuch(-under, "out of the far side"));
        }
        if (kind == last(hole)) {
            double made = seen.operation().depth().value().inside();
            found.addAll(seen.left(depth.leastMm() - made, "at its bottom"));
            if (kind != Operation.Kind.TAP) {
                found.addAll(seen.tooMuch(made - depth.greatestMm(), "at its bottom"));
            }
        }
        return found;
    }

    private static Operation.@Nullable Kind last(Hole hole) {
        return switch (hole.make()) {
            case PLAIN -> Operation.Kind.DRILL;
            case REAMED -> Operation.Kind.REAM;
            case BORED -> Operation.Kind.BORE;
            case TAPPED -> Operation.Kind.TAP;
        };
    }
}
