package setwright.window.model;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import setwright.figures.Figure;
import setwright.figures.Figures;

/** Finds bench figures by the beginnings of words: those of the name count before those of the sentence. */
final class FigureSearch {
    private static final int NOWHERE = 100;

    private FigureSearch() {}

    /** @param recent come first where they fit as well as others */
    static List<Figure> find(String search, List<String> recent) {
        List<String> wanted = words(search);
        return Figures.all().stream()
                .filter(figure -> rank(figure, wanted) < NOWHERE)
                .sorted(Comparator.comparingInt((Figure figure) -> rank(figure, wanted))
                        .thenComparingInt(figure -> place(figure, recent)))
                .toList();
    }

    private static int place(Figure figure, List<String> recent) {
        int at = recent.indexOf(figure.name());
        return at < 0 ? NOWHERE : at;
    }

    /** What the trade calls it besides. */
    private static final Map<String, List<String>> ALSO = Map.of(
            "spindle-speed", List.of("rpm", "revs", "rev"),
            "cutting-speed", List.of("sfm", "surface"),
            "table-feed", List.of("ipm"),
            "touch-off", List.of("edge", "zero", "finder"),
            "across-flats", List.of("hex", "hexagon", "af"),
            "flats-on-round", List.of("polygon"),
            "bolt-circle", List.of("pcd", "bc", "pitch circle"),
            "sweep-centre", List.of("indicate", "clock"),
            "mass", List.of("weight"),
            "gauge-stack", List.of("slips", "jo"));

    private static int rank(Figure figure, List<String> wanted) {
        if (wanted.isEmpty()) {
            return 0;
        }
        List<String> name = words(figure.name());
        List<String> also = ALSO.getOrDefault(figure.name(), List.of());
        if (figure.name().equals(String.join("-", wanted))) {
            return 0;
        }
        List<String> all = words(figure.name() + " " + figure.sentence() + " " + String.join(" ", figure.answers()));
        int rank = 1;
        for (int i = 0; i < wanted.size(); i++) {
            String word = wanted.get(i);
            boolean inPlace = i < name.size() && name.get(i).startsWith(word);
            rank += name.contains(word) || also.contains(word)
                    ? 0
                    : inPlace ? 1 : begun(name, word) ? 2 : begun(all, word) ? 10 : NOWHERE;
        }
        return rank;
    }

    private static boolean begun(List<String> words, String wanted) {
        return words.stream().anyMatch(word -> word.startsWith(wanted));
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
