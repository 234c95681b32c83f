package setwright.plan.part;

import java.util.List;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Single;
import setwright.geometry.Stock;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.Blank;
import setwright.job.Corner;
import setwright.job.OutlineBlank;
import setwright.job.Size;
import setwright.job.Tube;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** The largest blank in the part frame, in its own form; a casting and a bar of a section count as the box around them. */
final class BlankSolid {
    private BlankSolid() {}

    static Stock of(Blank blank) {
        Point3 size = new Point3(
                nominal(blank.envelope().length()),
                nominal(blank.envelope().depth()),
                blank.envelope().height().greatestMm());
        return switch (blank.kind()) {
            case BLOCK, PLATE, ROUGH_BODY, PROFILE_BAR -> Stock.block(size);
            case ROUND_BAR -> Stock.of(round(size, size.x()));
            case TUBE -> Stock.of(round(size, size.x())).less(round(size, nominal(((Tube) blank).bore())));
            case OUTLINE -> Stock.of(outline((OutlineBlank) blank, size.z()));
        };
    }

    private static double nominal(Size size) {
        return size.nominal().inside();
    }

    private static Single round(Point3 size, double diameter) {
        return new UprightCylinder(new Point2(size.x() / 2, size.y() / 2), diameter / 2, 0, size.z());
    }

    private static Single outline(OutlineBlank blank, double height) {
        List<Rounded.Corner> corners = blank.corners().stream()
                .map(corner -> new Rounded.Corner(
                        new Point2(corner.u().inside(), corner.v().inside()), rounding(corner)))
                .toList();
        return new Prism(Region.of(new Rounded(corners).anticlockwise().outline()), 0, height);
    }

    private static double rounding(Corner corner) {
        Typed<Length> radius = corner.radius();
        return radius == null ? 0 : radius.inside();
    }
}
