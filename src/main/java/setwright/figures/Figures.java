package setwright.figures;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every bench figure. */
public final class Figures {
    private static final List<Figure> ALL = Stream.of(
                    MotionFigures.all(),
                    ThreadFigures.all(),
                    LoadFigures.all(),
                    List.of(SpeedAndFeedFigure.FIGURE),
                    RigidityFigures.all(),
                    List.of(ChatterLimitFigure.FIGURE),
                    HoldingFigures.all(),
                    List.of(HoldBalanceFigure.FIGURE),
                    ScrewFigures.all(),
                    SizeFigures.all(),
                    AngleFigures.all(),
                    RoundFigures.all(),
                    KeyFigures.all(),
                    TouchFigures.all(),
                    List.of(TriangleFigure.FIGURE),
                    LayoutFigures.all(),
                    TravelFigures.all(),
                    IndexFigures.all(),
                    DividedFigures.all(),
                    FlatFigures.all(),
                    ArcFigures.all(),
                    TiltFigures.all(),
                    GearFigures.all(),
                    BatchFigures.all())
            .flatMap(List::stream)
            .toList();

    private Figures() {}

    public static List<Figure> all() {
        return ALL;
    }

    public static Optional<Figure> named(String name) {
        return ALL.stream().filter(figure -> figure.name().equals(name)).findFirst();
    }

    /** @throws Refusal where there is none of that name; the message names those that come near */
    public static Figure required(String name) {
        return named(name)
                .orElseThrow(() -> new Refusal(
                        "There is no figure '" + name + "'" + near(name) + "; 'figure' alone lists them all."));
    }

    private static String near(String name) {
        List<String> near = ALL.stream()
                .map(Figure::name)
                .filter(other -> common(name, other) >= 3)
                .sorted(Comparator.comparingInt((String other) -> -common(name, other)))
                .limit(3)
                .toList();
        return near.isEmpty() ? "" : "; near it: " + String.join(", ", near);
    }

    /** The longest word that both have, in letters. */
    private static int common(String name, String other) {
        int longest = 0;
        for (String word : other.split("-")) {
            for (String asked : name.split("-")) {
                int same = 0;
                while (same < Math.min(word.length(), asked.length()) && word.charAt(same) == asked.charAt(same)) {
                    same++;
                }
                longest = Math.max(longest, same);
            }
        }
        return longest;
    }
}
