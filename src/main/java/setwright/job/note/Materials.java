package setwright.job.note;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import setwright.shop.Material;
import setwright.shop.Shop;

/** Finds a material by what people call it. */
public final class Materials {
    /** Taken where nobody says what it is. */
    public static final String UNKNOWN_STEEL = "unknown-steel";

    private static final int NEAR = 3;

    private Materials() {}

    /** The material that is called so, in whatever order and case its words stand; unknown steel where nothing is said. */
    public static Optional<Material> called(String words, Shop shop) {
        if (words.isBlank()) {
            return shop.material(UNKNOWN_STEEL);
        }
        return shop.material(words.strip())
                .or(() -> shop.all(Material.class).stream()
                        .filter(material ->
                                names(material).anyMatch(name -> bag(name).equals(bag(words))))
                        .findFirst());
    }

    /** What to say where no material is called so, with the names that are nearest. */
    public static String unknown(String words, Shop shop) {
        List<String> near = shop.all(Material.class).stream()
                .sorted(Comparator.comparingInt(material -> distance(material, words)))
                .limit(NEAR)
                .map(material -> material.calledToo().isEmpty()
                        ? material.name()
                        : material.name() + " (" + material.calledToo().get(0) + ")")
                .toList();
        return "\"" + words.strip() + "\" is no material of this shop; near are " + Saying.list(near)
                + ". Left empty, it is reckoned as steel of unknown kind.";
    }

    private static Stream<String> names(Material material) {
        return Stream.concat(Stream.of(material.id(), material.name()), material.calledToo().stream());
    }

    private static TreeSet<String> bag(String words) {
        TreeSet<String> bag = new TreeSet<>(List.of(
                words.toLowerCase(Locale.ROOT).replace("aluminum", "aluminium").split("[^\\p{Alnum}.]+", -1)));
        bag.remove("");
        return bag;
    }

    private static int distance(Material material, String words) {
        return names(material).mapToInt(name -> distance(name, words)).min().orElse(Integer.MAX_VALUE);
    }

    /** How many letters have to be changed, put in or left out; less where one stands in the other. */
    private static int distance(String name, String words) {
        String one = name.toLowerCase(Locale.ROOT);
        String other = words.strip().toLowerCase(Locale.ROOT);
        boolean within = other.length() > 1 && one.contains(other);
        return within ? 0 : changes(one, other.substring(0, Math.min(other.length(), 40)));
    }

    private static int changes(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int j = 0; j < before.length; j++) {
            before[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] now = new int[other.length() + 1];
            now[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int same = before[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(same, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[other.length()];
    }
}
