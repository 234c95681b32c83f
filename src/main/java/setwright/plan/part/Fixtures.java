package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.StopAt;
import setwright.plan.Rows;
import setwright.shop.MachineTable;

/** Every body that stands on the table in a set-up, besides the part. */
final class Fixtures {
    /** Thickness drawn for the table, mm. */
    private static final double TABLE_THICKNESS = 60;

    private Fixtures() {}

    static List<Body> of(DrawnHolding holding, Heights heights, Rows rows) {
        List<Body> bodies = new ArrayList<>();
        bodies.add(table(rows.machine().table()));
        switch (holding.kind()) {
            case VISE -> addVise(bodies, (DrawnVise) holding, heights, rows);
            case TABLE -> addTable(bodies, (DrawnTable) holding, heights, rows);
            case DEVICE -> addDevice(bodies, (DrawnDevice) holding, heights, rows);
        }
        return List.copyOf(bodies);
    }

    private static Body table(MachineTable table) {
        double x = table.length().inside() / 2;
        double y = table.width().inside() / 2;
        return box("table", Role.TABLE, new Point2(-x, -y), new Point2(x, y), -TABLE_THICKNESS, 0);
    }

    private static void addVise(List<Body> bodies, DrawnVise holding, Heights heights, Rows rows) {
        rows.vise(holding.vise().value()).ifPresent(vise -> bodies.addAll(ViseBodies.of(holding, vise, heights, rows)));
        addStops(bodies, holding.stops(), heights, rows);
    }

    private static void addTable(List<Body> bodies, DrawnTable holding, Heights heights, Rows rows) {
        PackingPlaces.of(holding, heights, rows).forEach(place -> bodies.add(place.body(heights)));
        addStraps(bodies, holding.straps(), heights, rows);
        addStops(bodies, holding.stops(), heights, rows);
    }

    private static void addDevice(List<Body> bodies, DrawnDevice holding, Heights heights, Rows rows) {
        bodies.addAll(DeviceBodies.of(holding, heights, rows));
        if (holding.on() != DeviceHolding.On.ANGLE_PLATE) {
            addStraps(bodies, holding.straps(), heights, rows);
        }
        addStops(bodies, holding.stops(), heights, rows);
    }

    private static void addStraps(List<Body> bodies, List<DrawnStrap> straps, Heights heights, Rows rows) {
        StrapPlace.all(straps, heights, rows).forEach(place -> bodies.addAll(StrapBodies.of(place, rows)));
    }

    private static void addStops(List<Body> bodies, List<StopAt> stops, Heights heights, Rows rows) {
        stops.forEach(stop -> bodies.add(StopPlace.of(stop, heights, rows).body()));
    }

    static Body box(String name, Role role, Point2 corner, Point2 opposite, double low, double high) {
        return new Body(name, role, Prism.box(corner, opposite, low, Math.max(low, high)));
    }
}
