package setwright.rigidity.stability;

import java.util.random.RandomGenerator;
import setwright.cutting.Direction;
import setwright.cutting.Engagement;

/** Cuts of any kind. */
final class Cuts {
    private Cuts() {}

    static ToothCut any(RandomGenerator random) {
        Direction direction = random.nextBoolean() ? Direction.CLIMB : Direction.CONVENTIONAL;
        var arc = Engagement.of(direction, random.nextDouble(0.1, 0.999), 1);
        return new ToothCut(random.nextInt(1, 7), arc, random.nextDouble(500, 4000), random.nextDouble(0.1, 0.6));
    }

    static Mode anyMode(RandomGenerator random) {
        return Mode.ofHertz(
                random.nextDouble(200, 2500), random.nextDouble(0.01, 0.12), random.nextDouble(1000, 20000));
    }
}
