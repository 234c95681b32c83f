package setwright.drawing;

import setwright.geometry.Move;
import setwright.geometry.Nearest;
import setwright.geometry.Point3;
import setwright.geometry.ToolPath;

/** Winds the tool along its path: a fraction of the length, 0 at its start, 1 at its end. */
public record Winding(ToolPath path) {
    /** Where the tool point is. */
    public Point3 at(double fraction) {
        double wanted = Math.max(0, Math.min(1, fraction)) * path.length();
        double gone = 0;
        for (Move move : path.moves()) {
            double length = move.length();
            if (length > 0 && gone + length >= wanted) {
                return move.at((wanted - gone) / length);
            }
            gone += length;
        }
        return path.end();
    }

    /** The fraction at which the tool is where it comes nearest to something. */
    public double of(Nearest nearest) {
        double before = 0;
        for (int i = 0; i < path.moves().size(); i++) {
            Move move = path.moves().get(i);
            if (i == nearest.place().move()) {
                return (before + move.from().distance(nearest.place().toolPoint())) / path.length();
            }
            before += move.length();
        }
        return 0;
    }

    /** The move on which the tool is. */
    int move(double fraction) {
        double wanted = Math.max(0, Math.min(1, fraction)) * path.length();
        double gone = 0;
        for (int i = 0; i < path.moves().size(); i++) {
            double length = path.moves().get(i).length();
            if (length > 0 && gone + length >= wanted) {
                return i;
            }
            gone += length;
        }
        return path.moves().size() - 1;
    }
}
