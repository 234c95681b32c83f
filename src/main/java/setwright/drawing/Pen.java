package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** Collects the marks of one view while it is drawn. */
final class Pen {
    private final List<Mark> marks = new ArrayList<>();

    void add(Mark mark) {
        marks.add(mark);
    }

    void addAll(List<? extends Mark> more) {
        marks.addAll(more);
    }

    void line(LineRole role, Point2... points) {
        marks.add(Mark.Line.of(role, points));
    }

    void line(LineRole role, List<Point2> points) {
        marks.add(new Mark.Line(role, points));
    }

    void closed(LineRole role, List<Point2> corners) {
        List<Point2> round = new ArrayList<>(corners);
        round.add(corners.get(0));
        marks.add(new Mark.Line(role, round));
    }

    void fill(Fill fill, List<Point2> corners) {
        marks.add(new Mark.Shape(fill, corners));
    }

    void hatch(Hatch hatch, List<Point2> corners) {
        marks.add(new Mark.Hatched(hatch, corners));
    }

    /** What was drawn, in the frame that has to be in sight. */
    Drawing drawing(PlanBox frame) {
        return new Drawing(marks, frame);
    }

    static List<Point2> rectangle(Span across, Span up) {
        return List.of(
                new Point2(across.low(), up.low()),
                new Point2(across.high(), up.low()),
                new Point2(across.high(), up.high()),
                new Point2(across.low(), up.high()));
    }
}
