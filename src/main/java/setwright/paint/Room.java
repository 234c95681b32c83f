package setwright.paint;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room for words: where they lie on no other words, and on as little of the drawing as can be. */
final class Room {
    private static final double ON_WORDS = 50;
    private static final double ON_LEADER = 400;
    private static final double OUTSIDE = 100;
    private static final double ON_DRAWING = 1;
    private static final double AWAY = 6;
    private static final int ROUND = 16;
    private static final List<Double> FAR = List.of(22.0, 38.0, 60.0, 90.0, 130.0, 180.0);

    private final Rectangle2D area;
    private final List<Rectangle2D> words = new ArrayList<>();
    private final List<Line2D> leaders = new ArrayList<>();
    private final List<Rectangle2D> drawn = new ArrayList<>();

    Room(Rectangle2D area) {
        this.area = area;
    }

    List<Rectangle2D> words() {
        return List.copyOf(words);
    }

    /** Words that would be cut off at an edge, moved in; those that lie wholly beyond it stay there. */
    Rectangle2D within(Rectangle2D place) {
        if (!area.intersects(place)) {
            return place;
        }
        double left = Math.max(area.getMinX(), Math.min(place.getX(), area.getMaxX() - place.getWidth()));
        double top = Math.max(area.getMinY(), Math.min(place.getY(), area.getMaxY() - place.getHeight()));
        return new Rectangle2D.Double(left, top, place.getWidth(), place.getHeight());
    }

    /** Words stand here. */
    void take(Rectangle2D place) {
        words.add(place);
    }

    void take(Line2D leader) {
        leaders.add(leader);
    }

    /** Part of the drawing lies here. */
    void drawn(Rectangle2D place) {
        drawn.add(place);
    }

    /** The best place for words of a size near to a point; it is taken. */
    Rectangle2D near(Point2D at, double width, double height) {
        Rectangle2D best = new Rectangle2D.Double(at.getX(), at.getY(), width, height);
        double least = Double.POSITIVE_INFINITY;
        for (double far : FAR) {
            for (int i = 0; i < ROUND; i++) {
                Rectangle2D place = beside(at, far, 2 * Math.PI * i / ROUND, width, height);
                double cost = cost(place, at) + AWAY * far;
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
        }
        take(best);
        return best;
    }

    private static Rectangle2D beside(Point2D at, double far, double angle, double width, double height) {
        double x = at.getX() + far * Math.cos(angle);
        double y = at.getY() - far * Math.sin(angle);
        double left = Math.cos(angle) > 0.3 ? x : Math.cos(angle) < -0.3 ? x - width : x - width / 2;
        double top = Math.sin(angle) > 0.3 ? y - height : Math.sin(angle) < -0.3 ? y : y - height / 2;
        return new Rectangle2D.Double(left, top, width, height);
    }

    private double cost(Rectangle2D place, Point2D at) {
        double size = place.getWidth() * place.getHeight();
        double cost = OUTSIDE * (size - common(place, area));
        Line2D leader = new Line2D.Double(at, anchor(place, at));
        for (Rectangle2D other : words) {
            cost += ON_WORDS * common(place, other) + (leader.intersects(other) ? ON_LEADER : 0);
        }
        for (Line2D other : leaders) {
            cost += other.intersects(place) || other.intersectsLine(leader) ? ON_LEADER : 0;
        }
        for (Rectangle2D other : drawn) {
            cost += ON_DRAWING * common(place, other);
        }
        return cost;
    }

    private static double common(Rectangle2D a, Rectangle2D b) {
        Rectangle2D both = a.createIntersection(b);
        return both.getWidth() > 0 && both.getHeight() > 0 ? both.getWidth() * both.getHeight() : 0;
    }

    /** Where the leader leaves the words. */
    static Point2D anchor(Rectangle2D place, Point2D at) {
        double x = Math.max(place.getMinX(), Math.min(place.getMaxX(), at.getX()));
        boolean beside = x == place.getMinX() || x == place.getMaxX();
        double y = beside ? place.getCenterY() : at.getY() < place.getCenterY() ? place.getMinY() : place.getMaxY();
        return new Point2D.Double(x, y);
    }
}
