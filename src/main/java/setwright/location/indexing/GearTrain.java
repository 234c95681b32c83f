package setwright.location.indexing;

import java.util.List;
import setwright.quantity.Rational;

/**
 * Two or four change gears in the order of the drive: driver, driven, or driver, driven, driver, driven, where the second
 * and third sit on one stud.
 */
public record GearTrain(List<Integer> gears) {
    public GearTrain {
        gears = List.copyOf(gears);
        if (gears.size() != 2 && gears.size() != 4) {
            throw new IllegalArgumentException("A train has two or four gears, not " + gears + ".");
        }
    }

    /** Turns of the last gear for one of the first: drivers over driven. */
    public Rational ratio() {
        Rational first = Rational.of(gears.get(0), gears.get(1));
        return gears.size() == 2 ? first : first.times(Rational.of(gears.get(2), gears.get(3)));
    }

    public boolean simple() {
        return gears.size() == 2;
    }

    /** How far the sizes lie apart; less is easier to bring into mesh. */
    int spread() {
        return gears.stream().mapToInt(Integer::intValue).max().orElse(0)
                - gears.stream().mapToInt(Integer::intValue).min().orElse(0);
    }
}
