package setwright.location.indexing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.quantity.Rational;

/**
 * Every train that can be made of the gears owned, by its ratio; of each ratio two gears before four, then the sizes that
 * lie nearest. Drivers and driven can change places among themselves; one such order is given, the larger ones first.
 */
public record GearTrains(Map<Rational, List<GearTrain>> byRatio) {
    private static final int MOST_GEARS = 24;

    private static final Comparator<GearTrain> EASIEST =
            Comparator.comparing((GearTrain train) -> !train.simple()).thenComparing(GearTrain::spread);

    /** Trains of the twelve gears that come with a head. */
    public static final GearTrains OF_TWELVE = of(IndexHead.TWELVE_GEARS);

    public GearTrains {
        byRatio = Collections.unmodifiableMap(byRatio);
    }

    public static GearTrains of(List<Integer> owned) {
        if (owned.size() > MOST_GEARS || owned.stream().anyMatch(teeth -> teeth < 8 || teeth > 300)) {
            throw new IllegalArgumentException(
                    "Change gears are at most " + MOST_GEARS + " with 8 to 300 teeth each, not " + owned + ".");
        }
        Map<Rational, List<GearTrain>> found = new LinkedHashMap<>();
        List<Integer> sizes =
                owned.stream().distinct().sorted(Comparator.reverseOrder()).toList();
        for (int driver : sizes) {
            for (int driven : sizes) {
                add(found, owned, List.of(driver, driven));
            }
        }
        List<List<Integer>> pairs = pairs(sizes);
        for (List<Integer> drivers : pairs) {
            for (List<Integer> driven : pairs) {
                add(found, owned, List.of(drivers.get(0), driven.get(0), drivers.get(1), driven.get(1)));
            }
        }
        Map<Rational, List<GearTrain>> sorted = new LinkedHashMap<>();
        found.forEach((ratio, trains) ->
                sorted.put(ratio, trains.stream().sorted(EASIEST).toList()));
        return new GearTrains(sorted);
    }

    /** The trains of a head's gears. */
    static GearTrains of(IndexHead head) {
        return head.gears().equals(IndexHead.TWELVE_GEARS) ? OF_TWELVE : of(head.gears());
    }

    public List<GearTrain> with(Rational ratio) {
        return byRatio.getOrDefault(ratio, List.of());
    }

    /** The greatest step up that the gears make. */
    Rational greatest() {
        return byRatio.keySet().stream().max(Comparator.naturalOrder()).orElse(Rational.ZERO);
    }

    private static List<List<Integer>> pairs(List<Integer> sizes) {
        List<List<Integer>> pairs = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            for (int j = i; j < sizes.size(); j++) {
                pairs.add(List.of(sizes.get(i), sizes.get(j)));
            }
        }
        return pairs;
    }

    /** No gear is used more often than it is there. */
    private static void add(Map<Rational, List<GearTrain>> found, List<Integer> owned, List<Integer> gears) {
        boolean there = gears.stream()
                .allMatch(teeth -> Collections.frequency(gears, teeth) <= Collections.frequency(owned, teeth));
        if (there) {
            GearTrain train = new GearTrain(gears);
            found.computeIfAbsent(train.ratio(), ratio -> new ArrayList<>()).add(train);
        }
    }
}
