package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Point3;
import setwright.geometry.Profile;
import setwright.geometry.Role;
import setwright.geometry.Section;
import setwright.geometry.ToolStack;
import setwright.geometry.plane.Point2;

/**
 * Where the parts of a tool come to stand on an upright view.
 *
 * @param table the scale of heights over the table
 * @param tool the scale of heights over the tool point: a long holder is broken
 */
record ToolFrame(View view, Folds table, Folds tool) {
    /** So much of the quill is drawn, mm. */
    private static final double QUILL = 10;

    /** So much of a holder stays to either side of its break, mm. */
    private static final double HOLDER_END = 10;

    /**
     * A frame for a tool whose holder is broken where nothing can come near it.
     *
     * @param lowest height of the tool point
     * @param highest height of everything that stands on the table
     */
    static ToolFrame of(View view, Folds table, ToolStack tool, double lowest, double highest) {
        Folds folds = Folds.NONE;
        for (Section section : tool.sections()) {
            if (section.role() == Role.HOLDER) {
                double low = Math.max(section.profile().zLow() + HOLDER_END, highest + HOLDER_END - lowest);
                folds = Folds.between(low, section.profile().zHigh() - HOLDER_END);
            }
        }
        return new ToolFrame(view, table, folds);
    }

    /** Height on the drawing of what is so far over a tool point. */
    double y(Point3 point, double over) {
        return table.of(point.z()) + tool.of(over);
    }

    /** A place of the tool on the drawing. */
    Point2 of(Point3 point, Point3 place) {
        return new Point2(view.across(place), y(point, place.z() - point.z()));
    }

    /** The height over the tool point at which the quill is broken off. */
    static double top(ToolStack tool) {
        return tool.sections().stream()
                .filter(section -> section.role() == Role.QUILL)
                .mapToDouble(section -> section.profile().zLow() + QUILL)
                .findFirst()
                .orElse(tool.height());
    }

    /** A piece of a section of the tool as one sees it. */
    record Piece(Section section, List<Point2> corners, boolean brokenBelow, boolean brokenAbove) {
        Piece {
            corners = List.copyOf(corners);
        }
    }

    /** The pieces of a tool whose point is at a place, from below. */
    List<Piece> pieces(ToolStack stack, Point3 point) {
        double top = top(stack);
        List<Piece> pieces = new ArrayList<>();
        for (Section section : stack.sections()) {
            Profile profile = section.profile();
            Span whole = new Span(profile.zLow(), Math.min(profile.zHigh(), top));
            for (Span span : tool.pieces(whole)) {
                pieces.add(new Piece(
                        section,
                        corners(profile, span, point),
                        span.low() > profile.zLow(),
                        span.high() < profile.zHigh()));
            }
        }
        return pieces;
    }

    private List<Point2> corners(Profile profile, Span span, Point3 point) {
        double middle = view.across(point);
        double low = profile.zLow() == span.low() ? profile.radiusLow() : profile.radiusAt(span.low());
        double high = profile.radiusAt(span.high());
        return List.of(
                new Point2(middle - low, y(point, span.low())),
                new Point2(middle + low, y(point, span.low())),
                new Point2(middle + high, y(point, span.high())),
                new Point2(middle - high, y(point, span.high())));
    }
}
