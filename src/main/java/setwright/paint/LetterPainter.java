package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import setwright.drawing.Mark;

/** Writes words on a drawing, and remembers where they stand. */
final class LetterPainter {
    private static final double PAD = 2;

    private final Graphics2D g;
    private final Letters letters;
    private final Colours colours;
    private final Room room;

    LetterPainter(Graphics2D g, Letters letters, Colours colours, Room room) {
        this.g = g;
        this.letters = letters;
        this.colours = colours;
        this.room = room;
    }

    Graphics2D graphics() {
        return g;
    }

    Letters letters() {
        return letters;
    }

    Colours colours() {
        return colours;
    }

    Room room() {
        return room;
    }

    /** Words that end at x, their middle at y. */
    Rectangle2D right(String text, Mark.Lettering size, double x, double y) {
        double width = letters.width(text, size);
        double height = letters.height(size);
        Rectangle2D place = new Rectangle2D.Double(x - width, y - height / 2, width, height);
        room.take(place);
        write(text, size, place, colours.ink());
        return place;
    }

    /** A text where it belongs. */
    void text(Mark.Text text, Point2D at) {
        double width = letters.width(text.text(), text.lettering());
        double height = letters.height(text.lettering());
        double left = switch (text.anchor()) {
            case LEFT -> at.getX();
            case MIDDLE, ABOVE, BELOW -> at.getX() - width / 2;
            case RIGHT -> at.getX() - width;
        };
        double top = switch (text.anchor()) {
            case LEFT, MIDDLE, RIGHT -> at.getY() - height / 2;
            case ABOVE -> at.getY() - height - PAD;
            case BELOW -> at.getY() + PAD;
        };
        Rectangle2D place = room.within(new Rectangle2D.Double(left, top, width, height));
        room.take(place);
        write(text.text(), text.lettering(), place, colours.pencil());
    }

    /** Words in the middle of a place, on paper. */
    void on(String text, Point2D middle) {
        double width = letters.width(text, Mark.Lettering.PLAIN);
        double height = letters.height(Mark.Lettering.PLAIN);
        Rectangle2D place =
                new Rectangle2D.Double(middle.getX() - width / 2, middle.getY() - height / 2, width, height);
        room.take(place);
        paper(place);
        write(text, Mark.Lettering.PLAIN, place, colours.ink());
    }

    /** A letter where there is room beside a place. */
    void beside(String letter, Point2D at) {
        double width = letters.width(letter, Mark.Lettering.PLAIN);
        double height = letters.height(Mark.Lettering.PLAIN);
        Rectangle2D place = room.near(at, width, height);
        write(letter, Mark.Lettering.PLAIN, place, colours.ink());
    }

    /** Words where there is room, with a leader to what they are about. */
    void callOut(String text, Point2D at) {
        double width = letters.width(text, Mark.Lettering.PLAIN);
        double height = letters.height(Mark.Lettering.PLAIN);
        Rectangle2D place = room.near(at, width + 2 * PAD, height);
        Point2D anchor = Room.anchor(place, at);
        room.take(new Line2D.Double(anchor, at));
        g.setColor(colours.ink());
        g.setStroke(new BasicStroke(0.85f));
        g.draw(new Line2D.Double(anchor, at));
        paper(place);
        write(
                text,
                Mark.Lettering.PLAIN,
                new Rectangle2D.Double(place.getX() + PAD, place.getY(), width, height),
                colours.ink());
        g.setStroke(new BasicStroke(0.85f));
        g.draw(new Line2D.Double(place.getMinX(), place.getMaxY(), place.getMaxX(), place.getMaxY()));
    }

    private void paper(Rectangle2D place) {
        Color paper = colours.paper();
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 225));
        g.fill(new Rectangle2D.Double(place.getX() - PAD, place.getY(), place.getWidth() + 2 * PAD, place.getHeight()));
    }

    private void write(String text, Mark.Lettering size, Rectangle2D place, Color colour) {
        g.setColor(colour);
        g.setFont(letters.font(size));
        g.drawString(text, (float) place.getX(), (float) (place.getY() + letters.ascent(size)));
    }
}
