package setwright.figures;

import static setwright.figures.Input.count;
import static setwright.figures.Input.words;

import java.util.Arrays;
import java.util.List;
import setwright.location.indexing.IndexHead;
import setwright.location.indexing.IndexPlates;

/** The dividing head that a question is asked for: worm ratio, plates, change gears. */
final class HeadInputs {
    private static final int MOST_RATIO = 1000;
    static final Input RATIO = count("ratio").upTo(MOST_RATIO).or("40");
    static final Input PLATES = words("plates").or("three-plate");
    static final Input GEARS = words("gears").or("24,24,28,32,40,44,48,56,64,72,86,100");

    private HeadInputs() {}

    static IndexHead head(Asked asked) {
        return new IndexHead(
                asked.count("ratio"), plates(asked.words("plates")), "", asked.has("gears") ? gears(asked) : List.of());
    }

    private static IndexPlates plates(String typed) {
        return switch (typed.strip()) {
            case "three-plate" -> IndexPlates.THREE_PLATE;
            case "two-sided" -> IndexPlates.TWO_SIDED;
            default -> {
                try {
                    yield IndexPlates.reading(typed);
                } catch (IllegalArgumentException unread) {
                    throw Refusal.of(
                            "plates", unread.getMessage() + " Accepted: three-plate, two-sided, or 15,16,17;21,23.");
                }
            }
        };
    }

    static List<Integer> gears(Asked asked) {
        String typed = asked.words("gears");
        List<String> each = Arrays.asList(typed.strip().split("[\\s,]+"));
        if (each.stream().anyMatch(teeth -> !teeth.matches("\\d{1,4}"))) {
            throw Refusal.of("gears", "'" + typed + "' is not accepted; accepted: their teeth, as 24,24,28,32.");
        }
        return each.stream().map(Integer::valueOf).toList();
    }
}
