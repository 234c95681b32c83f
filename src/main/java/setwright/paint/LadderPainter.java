package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import setwright.drawing.Mark;
import setwright.drawing.Spread;
import setwright.geometry.plane.Point2;

/** Paints the height ladder: two rails, a rung for every level, its figure and name to the left. */
final class LadderPainter {
    private static final double HALF = 4.5;
    private static final double BEND = 12;
    private static final double GAP = 8;
    private static final Mark.Lettering SIZE = Mark.Lettering.PLAIN;

    private final LetterPainter letters;
    private final Fit fit;

    LadderPainter(LetterPainter letters, Fit fit) {
        this.letters = letters;
        this.fit = fit;
    }

    /** Px that the words of a ladder take to its left. */
    static double width(Mark.Ladder ladder, Letters letters) {
        return names(ladder, letters) + GAP + figures(ladder, letters) + BEND + HALF;
    }

    private static double names(Mark.Ladder ladder, Letters letters) {
        return ladder.rungs().stream()
                .mapToDouble(rung -> letters.width(rung.name(), SIZE))
                .max()
                .orElse(0);
    }

    private static double figures(Mark.Ladder ladder, Letters letters) {
        return ladder.rungs().stream()
                .mapToDouble(rung -> letters.width(rung.figure(), SIZE))
                .max()
                .orElse(0);
    }

    void paint(Mark.Ladder ladder, Rectangle2D area) {
        if (ladder.rungs().isEmpty()) {
            return;
        }
        Graphics2D g = letters.graphics();
        double x = fit.px(new Point2(ladder.x(), 0)).getX();
        rails(g, ladder, x);
        List<Mark.Rung> inSight = ladder.rungs().stream()
                .filter(rung -> y(rung.y()) >= area.getMinY() && y(rung.y()) <= area.getMaxY())
                .toList();
        List<Double> places = places(inSight, area);
        for (int i = 0; i < inSight.size(); i++) {
            rung(g, inSight.get(i), x, places.get(i));
        }
        if (inSight.isEmpty()) {
            return;
        }
        double top = places.get(places.size() - 1) - letters.letters().height(SIZE);
        letters.right(ladder.unit(), Mark.Lettering.SMALL, x - HALF - BEND, top);
    }

    private void rails(Graphics2D g, Mark.Ladder ladder, double x) {
        double low = y(ladder.rungs().get(0).y());
        double high = y(ladder.rungs().get(ladder.rungs().size() - 1).y());
        g.setColor(letters.colours().ink());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x - HALF, low, x - HALF, high));
        g.draw(new Line2D.Double(x + HALF, low, x + HALF, high));
        for (double at : ladder.breaks()) {
            Rectangle2D gap = new Rectangle2D.Double(x - HALF - 2, y(at) - 2.5, 2 * HALF + 4, 5);
            g.setColor(letters.colours().paper());
            g.fill(gap);
            g.setColor(letters.colours().pencil());
            for (double edge : new double[] {gap.getMinY(), gap.getMaxY()}) {
                g.draw(Strokework.wave(new Point2D.Double(x - HALF - 4, edge), new Point2D.Double(x + HALF + 4, edge)));
            }
        }
    }

    private double y(double mm) {
        return fit.px(new Point2(0, mm)).getY();
    }

    /** Px of the middle of every line of words, moved apart where levels are close. */
    private List<Double> places(List<Mark.Rung> rungs, Rectangle2D area) {
        double line = letters.letters().height(SIZE);
        List<Double> up = new ArrayList<>();
        rungs.forEach(rung -> up.add(-y(rung.y())));
        return Spread.apart(up, line, -area.getMaxY() + line / 2, -area.getMinY() - 1.5 * line).stream()
                .map(value -> -value)
                .toList();
    }

    private void rung(Graphics2D g, Mark.Rung rung, double x, double place) {
        double y = y(rung.y());
        g.setColor(letters.colours().faint());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Line2D.Double(
                x + HALF, y, fit.px(new Point2(rung.reach(), 0)).getX(), y));
        g.setColor(letters.colours().ink());
        g.setStroke(new BasicStroke(rung.moves() ? 1f : 2.2f));
        g.draw(new Line2D.Double(x - HALF, y, x + HALF, y));
        if (rung.moves()) {
            Strokework.arrow(g, new Point2D.Double(x + HALF + 20, y), new Point2D.Double(x + HALF, y));
        }
        g.setColor(letters.colours().pencil());
        g.setStroke(new BasicStroke(0.85f));
        g.draw(new Line2D.Double(x - HALF - BEND + 2, place, x - HALF, y));
        Rectangle2D figure = letters.right(rung.figure(), SIZE, x - HALF - BEND, place);
        letters.right(rung.name(), SIZE, figure.getMinX() - GAP, place);
    }
}
