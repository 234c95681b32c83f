package setwright.window.view.part;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/** Drags a thing of a row so many places along it; keys do the same. */
public final class Dragged extends MouseAdapter {
    private final JComponent thing;
    private final boolean along;
    private final IntConsumer move;
    private int pressed;

    private Dragged(JComponent thing, boolean along, IntConsumer move) {
        this.thing = thing;
        this.along = along;
        this.move = move;
    }

    /** In a row from left to right. */
    public static void along(JComponent thing, IntConsumer move) {
        thing.addMouseListener(new Dragged(thing, true, move));
    }

    /** In a row from top to bottom. */
    public static void down(JComponent thing, IntConsumer move) {
        thing.addMouseListener(new Dragged(thing, false, move));
    }

    @Override
    public void mousePressed(MouseEvent event) {
        pressed = at(event);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        int size = along ? thing.getWidth() : thing.getHeight();
        int places = size == 0 ? 0 : Math.round((at(event) - pressed) / (float) size);
        if (places != 0) {
            move.accept(places);
        }
    }

    private int at(MouseEvent event) {
        return along ? event.getX() : event.getY();
    }
}
