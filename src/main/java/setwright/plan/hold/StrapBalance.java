package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.holding.Friction;
import setwright.holding.StrapGrip;
import setwright.holding.StrapGrip.Bearing;
import setwright.holding.StrapGrip.Pad;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DrawnStrap;
import setwright.job.StopAt;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StopPlace;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Value;

/** The balance of a part under straps: each presses with what the lever leaves of its stud's force. */
record StrapBalance(String setUp, List<DrawnStrap> straps, List<StopAt> stops, SetUpStage stage, Rows rows) {
    private static final Vector DOWN = Vector.UP.times(-1);

    /** Straps and bolts from above on a flat part, clamps against its edges; empty where no strap's rows are there. */
    Optional<Balance> flat(List<Bearing> beside, Friction friction) {
        List<Pad> pads = new ArrayList<>();
        List<Bearing> bearings = new ArrayList<>();
        for (StrapPlace strap : places()) {
            double x = strap.pad().x() - heights().left();
            double y = strap.pad().y() - heights().front();
            double z = strap.padHeight() - heights().partBottom();
            pads.add(new Pad(
                    strap.name(), new Vector(x, y, z), into(strap), press(strap).inside()));
            bearings.add(Bearing.across("under the " + strap.name(), new Vector(x, y, 0), Vector.UP));
        }
        bearings.addAll(beside);
        return balance(pads, bearings, friction);
    }

    /** Straight down; of an edge clamp sideways into the part and a little down. */
    private static Vector into(StrapPlace strap) {
        return strap.edgeClamp()
                .map(row -> {
                    Point2 way = strap.toward();
                    double down = row.down().inside();
                    return new Vector(-way.x(), -way.y(), -down).times(1 / StrictMath.hypot(1, down));
                })
                .orElse(DOWN);
    }

    /** Straps on the crown of a bar in a cradle. */
    Optional<Balance> round(Bearings.Cradle cradle, Friction friction) {
        double radius = heights().depth() / 2;
        List<Pad> pads = new ArrayList<>();
        List<Bearing> bearings = new ArrayList<>();
        boolean continuous = cradle.along().size() == 2;
        for (StrapPlace strap : places()) {
            double x = strap.pad().x() - heights().left();
            pads.add(new Pad(
                    strap.name(),
                    new Vector(x, radius, height()),
                    DOWN,
                    press(strap).inside()));
            if (continuous) {
                bearings.addAll(cradle.at(x, " under the " + strap.name(), radius, true));
            }
        }
        for (double x : cradle.along()) {
            String half = x < heights().length() / 2 ? ", left" : ", right";
            bearings.addAll(cradle.at(x, half, radius, !continuous));
        }
        return balance(pads, bearings, friction);
    }

    /** Clamps that press the part on an upright face behind it; it stands on the table. */
    Optional<Balance> upright(Friction friction) {
        List<Pad> pads = new ArrayList<>();
        List<Bearing> bearings = new ArrayList<>();
        for (StrapPlace strap : places()) {
            double x = strap.drawn().u().value().inside();
            double z = strap.drawn().v().value().inside();
            String name = x < heights().length() / 2 ? "left clamp" : "right clamp";
            pads.add(
                    new Pad(name, new Vector(x, 0, z), Vector.AWAY, press(strap).inside()));
            bearings.add(
                    Bearing.across("behind the " + name, new Vector(x, heights().depth(), z), Vector.AWAY.times(-1)));
        }
        bearings.addAll(Bearings.face(heights()));
        return balance(pads, bearings, friction);
    }

    private Optional<Balance> balance(List<Pad> pads, List<Bearing> bearings, Friction friction) {
        if (pads.isEmpty()) {
            return Optional.empty();
        }
        stops.forEach(stop -> bearings.add(against(StopPlace.of(stop, heights(), rows))));
        StrapGrip grip = new StrapGrip(pads, bearings, friction);
        Load weight = Balance.weight(stage, rows);
        return Optional.of(Balance.of(outlook -> grip.grip(outlook, weight), press(places().get(0))));
    }

    private Bearing against(StopPlace stop) {
        Vector at = new Vector(
                stop.touches().x() - heights().left(),
                stop.touches().y() - heights().front(),
                stop.high() - heights().partBottom());
        Vector inward = new Vector(-stop.outward().x(), -stop.outward().y(), 0);
        return Bearing.beside(stop.name(), at, inward);
    }

    private Value press(StrapPlace strap) {
        return StrapPress.of(strap, setUp);
    }

    private List<StrapPlace> places() {
        return StrapPlace.all(straps, heights(), rows);
    }

    private Heights heights() {
        return stage.heights();
    }

    private double height() {
        return heights().startTop() - heights().partBottom();
    }
}
