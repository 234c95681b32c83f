package setwright.window.view.bench;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import setwright.drawing.Bench;
import setwright.drawing.Drawing;
import setwright.drawing.Place;
import setwright.drawing.View;
import setwright.drawing.Winding;
import setwright.paint.DrawingPainter;
import setwright.paint.Eye;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Printing;
import setwright.window.look.Look;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.state.Selection;

/** The drawing of the set-up, to scale: front view with the height ladder, plan aligned with it, end view by a key. */
public final class BenchView extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final double STEP = 0.02;
    private static final double ZOOM = 1.25;
    /** From this width on there is room for the end view too: the bench of a window of 1600 px. */
    private static final int WIDE = 950;

    private transient Optional<Plan> plan = Optional.empty();
    private transient Place place = new Place("");
    private transient Drawing drawing = Drawing.EMPTY;
    private transient Set<View> drawnViews = EnumSet.noneOf(View.class);
    private transient Eye eye = Eye.FIT;
    private transient Optional<Drawing> plot = Optional.empty();
    private boolean sideAsked;

    public BenchView() {
        setName("bench.drawing");
        setFocusable(true);
        setPreferredSize(new Dimension(820, 490));
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(hand);
        BenchKeys.bind(this);
    }

    /** @param lying a plot that lies over the set-up; empty for none */
    public void show(Optional<Plan> shown, Selection at, Optional<Drawing> lying) {
        if (!lying.equals(plot)) {
            plot = lying;
            eye = Eye.FIT;
            repaint();
        }
        boolean known = at.line().equals(Place.FINISHED)
                || shown.flatMap(now -> now.part().operation(at.line())).isPresent();
        String operation = known ? at.line() : "";
        boolean elsewhere =
                !place.setUp().equals(at.setUp()) || !place.operation().equals(operation);
        if (elsewhere) {
            plan = shown;
            place = new Place(at.setUp(), operation, 0);
            tightest();
        } else if (shown.orElse(null) != plan.orElse(null)) {
            plan = shown;
            redraw();
        }
        BenchWords.describe(this, shown, at);
    }

    /** Carries the tool along its path by so many steps. */
    public void wind(int steps) {
        place = new Place(place.setUp(), place.operation(), Math.max(0, Math.min(1, place.wind() + steps * STEP)));
        redraw();
    }

    /** Carries the tool to where it comes nearest to something. */
    public void tightest() {
        double wind = plan.flatMap(now -> now.part()
                        .operation(place.operation())
                        .flatMap(on -> now.room()
                                .operation(place.operation())
                                .map(OperationRoom::nearest)
                                .map(nearest -> new Winding(on.path()).of(nearest))))
                .orElse(0.0);
        place = new Place(place.setUp(), place.operation(), wind);
        redraw();
    }

    public void side() {
        sideAsked = !sideAsked;
        redraw();
    }

    public void fit() {
        eye = Eye.FIT;
        repaint();
    }

    public void zoom(boolean larger) {
        zoomAt(larger, getWidth() / 2.0, getHeight() / 2.0);
    }

    public void pan(int dx, int dy) {
        eye = eye.moved(dx, dy);
        repaint();
    }

    private void zoomAt(boolean larger, double x, double y) {
        eye = eye.zoomed(larger ? ZOOM : 1 / ZOOM, x, y);
        repaint();
    }

    private Set<View> views() {
        Set<View> views = EnumSet.of(View.FRONT, View.TOP);
        if (sideAsked || getWidth() >= WIDE) {
            views.add(View.SIDE);
        }
        return views;
    }

    private void redraw() {
        drawnViews = views();
        drawing = plan.map(now ->
                        Bench.of(now, place, new Printing(now.job().plan().units()), drawnViews))
                .orElse(Drawing.EMPTY);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (!drawnViews.equals(views())) {
            redraw();
        }
        Graphics2D g = Written.sharp(graphics);
        g.setFont(getFont());
        DrawingPainter.paint(
                g,
                plot.orElse(drawing),
                new Rectangle2D.Double(0, 0, getWidth(), getHeight()),
                Look.now().ofDrawings(),
                eye);
        if (isFocusOwner()) {
            g.setColor(Palette.now().accent());
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        g.dispose();
    }

    /** Drag moves the sheet, the wheel makes it larger or smaller; keys do the same. */
    private final class Hand extends MouseAdapter {
        private int x;
        private int y;

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            x = event.getX();
            y = event.getY();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            pan(event.getX() - x, event.getY() - y);
            x = event.getX();
            y = event.getY();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            zoomAt(event.getWheelRotation() < 0, event.getX(), event.getY());
        }
    }
}
