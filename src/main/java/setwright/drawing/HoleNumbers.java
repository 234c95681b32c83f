package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Point2;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;

/** The holes of a set-up, numbered from 1 in the order in which a tool first comes to them; drawing and sheet agree. */
public record HoleNumbers(List<Point2> places) {
    private static final double SAME = 1e-6;

    public HoleNumbers {
        places = List.copyOf(places);
    }

    public static HoleNumbers of(SetUpStage stage) {
        List<Point2> places = new ArrayList<>();
        for (OperationStage operation : stage.operations()) {
            for (Point2 spot : operation.spots()) {
                if (places.stream().noneMatch(place -> place.distance(spot) < SAME)) {
                    places.add(spot);
                }
            }
        }
        return new HoleNumbers(places);
    }

    /** The number of the hole at a place on the table; 0 where there is none. */
    public int at(Point2 spot) {
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).distance(spot) < SAME) {
                return i + 1;
            }
        }
        return 0;
    }
}
