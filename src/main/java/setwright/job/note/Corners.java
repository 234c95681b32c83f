package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Edge;
import setwright.job.Pattern.Datum;

/** The words for sides, for the edges of a side and for its corners. */
final class Corners {
    private static final List<String> WORDS = List.of(
            "top",
            "bottom",
            "underside",
            "front",
            "back",
            "rear",
            "left",
            "right",
            "upper",
            "lower",
            "low",
            "high",
            "centre",
            "center",
            "middle");

    private Corners() {}

    static boolean isWord(@Nullable Piece piece) {
        return piece != null && piece.is(Piece.Kind.WORD) && WORDS.contains(piece.text());
    }

    /** The side of that name; null where the word names none. */
    static @Nullable Side side(Piece word) {
        return switch (word.text()) {
            case "top" -> Side.TOP;
            case "bottom", "underside" -> Side.BOTTOM;
            case "front" -> Side.FRONT;
            case "back", "rear" -> Side.BACK;
            case "left" -> Side.LEFT;
            case "right" -> Side.RIGHT;
            default -> null;
        };
    }

    /** The edge of a side that a word names, as one looks at the side squarely; null where it names none. */
    static @Nullable Edge edge(Side side, String word) {
        return switch (word) {
            case "low", "lower" -> Edge.LOW;
            case "high", "upper" -> Edge.HIGH;
            case "top" -> isUpright(side) ? Edge.HIGH : null;
            case "bottom", "underside" -> isUpright(side) ? Edge.LOW : null;
            case "front" -> front(side);
            case "back", "rear" -> opposite(front(side));
            case "left" -> Edge.LEFT;
            case "right" -> Edge.RIGHT;
            default -> null;
        };
    }

    private static boolean isUpright(Side side) {
        return side != Side.TOP && side != Side.BOTTOM;
    }

    /** The edge of a side towards the front of the part. */
    private static @Nullable Edge front(Side side) {
        return switch (side) {
            case TOP -> Edge.LOW;
            case BOTTOM -> Edge.HIGH;
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
            case FRONT, BACK -> null;
        };
    }

    private static @Nullable Edge opposite(@Nullable Edge edge) {
        if (edge == null) {
            return null;
        }
        return switch (edge) {
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
            case LOW -> Edge.HIGH;
            case HIGH -> Edge.LOW;
        };
    }

    /** What an edge of a side is called: the front of the top, not its low edge. */
    static String name(Side side, Edge edge) {
        return switch (edge) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case LOW -> side == Side.TOP ? "front" : side == Side.BOTTOM ? "back" : "bottom";
            case HIGH -> side == Side.TOP ? "back" : side == Side.BOTTOM ? "front" : "top";
        };
    }

    /** The corner that words name on a side; the lower left one where there are none. */
    static Datum datum(Side side, List<Piece> words) {
        List<Edge> edges = new ArrayList<>();
        for (Piece word : words) {
            if (List.of("centre", "center", "middle").contains(word.text())) {
                return Datum.CENTRE;
            }
            Edge edge = edge(side, word.text());
            if (edge == null) {
                throw Halt.refused(
                        Saying.at(word) + " is no edge of the " + side.name().toLowerCase(Locale.ROOT)
                                + " side; left, right, lower and upper always are.",
                        word);
            }
            edges.add(edge);
        }
        boolean right = edges.contains(Edge.RIGHT);
        boolean high = edges.contains(Edge.HIGH);
        return right ? (high ? Datum.RIGHT_HIGH : Datum.RIGHT_LOW) : (high ? Datum.LEFT_HIGH : Datum.LEFT_LOW);
    }
}
