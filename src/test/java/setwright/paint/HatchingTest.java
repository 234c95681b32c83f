package setwright.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.drawing.Hatch;

class HatchingTest {
    private static final Point2D ORIGIN = new Point2D.Double(3, 5);

    @Test
    void every_line_has_both_ends_on_the_edge_of_the_area() {
        Rounds.each(11, (random, round) -> {
            double x = random.nextDouble(0, 200);
            double y = random.nextDouble(0, 200);
            double width = random.nextDouble(4, 80);
            double height = random.nextDouble(4, 80);
            double lean = random.nextDouble(-3, 3);
            List<Point2D> area = List.of(
                    new Point2D.Double(x, y),
                    new Point2D.Double(x + width, y),
                    new Point2D.Double(x + width + lean, y + height),
                    new Point2D.Double(x + lean, y + height));
            for (Hatch hatch : Hatch.values()) {
                List<Point2D> ends = ends(new Path2D.Double(Hatching.lines(area, hatch, ORIGIN)));
                assertThat(ends.size() % 2).isZero();
                assertThat(ends).allSatisfy(end -> assertThat(gap(area, end)).isLessThan(1e-5));
            }
        });
    }

    @Test
    void areas_side_by_side_are_in_step() {
        List<Point2D> left = square(0);
        List<Point2D> right = square(40);
        List<Point2D> ends = ends(new Path2D.Double(Hatching.lines(left, Hatch.PART, ORIGIN)));
        List<Point2D> others = ends(new Path2D.Double(Hatching.lines(right, Hatch.PART, ORIGIN)));

        assertThat(ends.stream().filter(end -> Math.abs(end.getX() - 40) < 1e-9))
                .isNotEmpty()
                .allSatisfy(end -> assertThat(
                                others.stream().mapToDouble(end::distance).min().orElse(99))
                        .isLessThan(1e-6));
    }

    private static List<Point2D> square(double x) {
        return List.of(
                new Point2D.Double(x, 0),
                new Point2D.Double(x + 40, 0),
                new Point2D.Double(x + 40, 40),
                new Point2D.Double(x, 40));
    }

    private static double gap(List<Point2D> area, Point2D end) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < area.size(); i++) {
            Point2D a = area.get(i);
            Point2D b = area.get((i + 1) % area.size());
            least = Math.min(
                    least,
                    java.awt.geom.Line2D.ptSegDist(a.getX(), a.getY(), b.getX(), b.getY(), end.getX(), end.getY()));
        }
        return least;
    }

    private static List<Point2D> ends(Path2D path) {
        List<Point2D> ends = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator steps = path.getPathIterator(null); !steps.isDone(); steps.next()) {
            steps.currentSegment(at);
            ends.add(new Point2D.Double(at[0], at[1]));
        }
        return ends;
    }
}
