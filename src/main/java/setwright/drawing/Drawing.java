package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/**
 * Marks in millimetres, later ones over earlier ones.
 *
 * @param extent what has to be in sight; marks never lie outside it, their letters may
 */
public record Drawing(List<Mark> marks, PlanBox extent) {
    public static final Drawing EMPTY = new Drawing(List.of(), PlanBox.EMPTY);

    public Drawing {
        marks = List.copyOf(marks);
    }

    /** A drawing just as large as its marks. */
    public static Drawing of(List<Mark> marks) {
        return new Drawing(marks, marks.stream().map(Mark::box).reduce(PlanBox.EMPTY, PlanBox::and));
    }

    public boolean isEmpty() {
        return marks.isEmpty();
    }

    public Drawing moved(Point2 by) {
        PlanBox moved = extent.isEmpty()
                ? extent
                : new PlanBox(
                        extent.xLow() + by.x(),
                        extent.yLow() + by.y(),
                        extent.xHigh() + by.x(),
                        extent.yHigh() + by.y());
        return new Drawing(marks.stream().map(mark -> mark.moved(by)).toList(), moved);
    }

    /** This drawing with another beside it or on it. */
    public Drawing and(Drawing other) {
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(other.marks);
        return new Drawing(all, extent.and(other.extent));
    }

    public Drawing and(Mark mark) {
        return and(of(List.of(mark)));
    }

    /** The marks of one kind. */
    public <M extends Mark> List<M> all(Class<M> kind) {
        return marks.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
