package setwright.caution.check;

import java.util.List;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DeviceHolding;
import setwright.job.Edge;
import setwright.job.Holding;
import setwright.job.StopAt;
import setwright.job.TableHolding;
import setwright.job.ViseHolding;
import setwright.plan.Plan;

/** A stop put elsewhere. */
record StopChanges(Plan plan, String setUp) {
    /** The stop of that name to the opposite side of the part. */
    List<Proposal> otherEnd(String name) {
        String side = name.substring(0, Math.max(0, name.indexOf(' ')));
        String other = switch (side) {
            case "left" -> "right";
            case "right" -> "left";
            case "front" -> "back";
            default -> "front";
        };
        return List.of(new Proposal(
                Way.PACKING_PLACE,
                "Set the " + name + " to the " + other + ".",
                new PlaceChanges(plan, setUp).with(before -> before.withHolding(with(before.holding(), side)))));
    }

    private static Holding with(Holding holding, String side) {
        return switch (holding.kind()) {
            case UNDECIDED -> holding;
            case VISE -> {
                ViseHolding vise = (ViseHolding) holding;
                yield vise.withStops(moved(vise.stops(), side));
            }
            case TABLE -> {
                TableHolding table = (TableHolding) holding;
                yield table.withStops(moved(table.stops(), side));
            }
            case DEVICE -> {
                DeviceHolding device = (DeviceHolding) holding;
                yield device.withStops(moved(device.stops(), side));
            }
        };
    }

    private static List<StopAt> moved(List<StopAt> stops, String side) {
        return stops.stream()
                .map(stop -> word(stop.side()).equals(side)
                        ? new StopAt(stop.id(), stop.stop(), opposite(stop.side()), stop.along())
                        : stop)
                .toList();
    }

    private static String word(Edge edge) {
        return switch (edge) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case LOW -> "front";
            case HIGH -> "back";
        };
    }

    private static Edge opposite(Edge edge) {
        return switch (edge) {
            case LEFT -> Edge.RIGHT;
            case RIGHT -> Edge.LEFT;
            case LOW -> Edge.HIGH;
            case HIGH -> Edge.LOW;
        };
    }
}
