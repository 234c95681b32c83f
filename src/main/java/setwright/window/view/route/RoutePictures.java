package setwright.window.view.route;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import setwright.drawing.Drawing;
import setwright.drawing.Thumbnail;
import setwright.paint.DrawingPainter;
import setwright.plan.Plan;
import setwright.window.look.Look;

/** Small pictures of the part as it stands after each set-up, drawn once for a plan. */
public final class RoutePictures implements RouteCardView.Picture {
    private Optional<Plan> plan = Optional.empty();
    private final Map<String, Drawing> drawn = new LinkedHashMap<>();

    public void show(Optional<Plan> shown) {
        if (shown.orElse(null) != plan.orElse(null)) {
            plan = shown;
            drawn.clear();
        }
    }

    @Override
    public void paint(Graphics2D g, String setUp, Dimension size) {
        Drawing drawing = drawn.computeIfAbsent(
                setUp, id -> plan.map(now -> Thumbnail.of(now, id)).orElse(Drawing.EMPTY));
        if (!drawing.isEmpty()) {
            DrawingPainter.paint(
                    g,
                    drawing,
                    new Rectangle2D.Double(0, 0, size.width, size.height),
                    Look.now().ofDrawings());
        }
    }
}
