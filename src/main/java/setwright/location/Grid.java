package setwright.location;

import java.util.ArrayList;
import java.util.List;

/**
 * Holes on a rectangular pattern about its centre; millimetres.
 *
 * @param columns along x
 * @param rows along y
 * @param pitchX between columns
 * @param pitchY between rows
 */
public record Grid(int columns, int rows, double pitchX, double pitchY, Place centre) {
    public Grid {
        if (columns < 1 || rows < 1) {
            throw new IllegalArgumentException(
                    "A grid has columns and rows, not " + columns + " columns and " + rows + " rows.");
        }
    }

    /** Four holes at the corners of a rectangle of holes: 56 x 30. */
    public static Grid corners(double length, double width, Place centre) {
        return new Grid(2, 2, length, width, centre);
    }

    /** Row by row from the front, to and fro, so that the table is wound the least. */
    public List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i < columns; i++) {
                int column = row % 2 == 0 ? i : columns - 1 - i;
                places.add(place(column, row));
            }
        }
        return List.copyOf(places);
    }

    private Place place(int column, int row) {
        return new Place(
                centre.x() + (column - (columns - 1) / 2.0) * pitchX, centre.y() + (row - (rows - 1) / 2.0) * pitchY);
    }
}
