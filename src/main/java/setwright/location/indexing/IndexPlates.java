package setwright.location.indexing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The index plates of a dividing head, in their order. */
public record IndexPlates(List<PlateFace> faces) {
    private static final int MOST_CIRCLES = 100;

    /** Circles read at schsm.org (compound-indexing article). */
    public static final IndexPlates THREE_PLATE = reading("15,16,17,18,19,20;21,23,27,29,31,33;37,39,41,43,47,49");

    /** Circles read in OD1644, lesson 1, figure 11 (armyordnance.tpub.com). */
    public static final IndexPlates TWO_SIDED =
            reading("24,25,28,30,34,37,38,39,41,42,43;46,47,49,51,53,54,57,58,59,62,66");

    public IndexPlates {
        faces = List.copyOf(faces);
        if (faces.isEmpty()
                || faces.stream().mapToInt(face -> face.circles().size()).sum() > MOST_CIRCLES) {
            throw new IllegalArgumentException("Index plates have from 1 to " + MOST_CIRCLES + " circles together.");
        }
    }

    /** Plates between semicolons, the circles of each between commas or blanks: {@code 15,16,17;21,23}. */
    public static IndexPlates reading(String text) {
        return of(Arrays.asList(text.split(";", -1)));
    }

    /** One text a plate. */
    public static IndexPlates of(List<String> plates) {
        List<PlateFace> faces = new ArrayList<>();
        for (String plate : plates) {
            faces.add(new PlateFace("plate " + (faces.size() + 1), circles(plate)));
        }
        return new IndexPlates(faces);
    }

    private static List<Integer> circles(String plate) {
        return Stream.of(plate.strip().split("[\\s,]+"))
                .map(word -> {
                    if (!word.matches("\\d{1,4}")) {
                        throw new IllegalArgumentException("'" + plate.strip() + "' is no index plate; a plate is"
                                + " written as the holes of its circles, 15,16,17, and the next behind a semicolon.");
                    }
                    return Integer.parseInt(word);
                })
                .toList();
    }
}
