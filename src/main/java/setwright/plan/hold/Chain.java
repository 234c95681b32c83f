package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.holding.DeviceBolts;
import setwright.holding.Friction;
import setwright.holding.balance.Vector;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.shop.FixturePlate;
import setwright.shop.Vise;

/** The joints from what holds the part down to the table, each with its own balance. */
record Chain(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
    /** A fixture plate has a bolt near every corner (common practice). */
    private static final int PLATE_BOLTS = 4;

    static List<JointBalance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        Chain chain = new Chain(setUp, stage, rows);
        return switch (setUp.holding().kind()) {
            case VISE -> chain.vise(((DrawnVise) setUp.holding()).vise().value());
            case TABLE -> List.of();
            case DEVICE -> chain.device((DrawnDevice) setUp.holding());
        };
    }

    private List<JointBalance> vise(String id) {
        return rows.vise(id).stream()
                .flatMap(vise -> foot().stream().map(base -> bolted(vise, base)))
                .toList();
    }

    private JointBalance bolted(Vise vise, Box base) {
        return DeviceBalance.bolted(
                setUp.id(),
                new DeviceBalance.Foot(vise.name(), base, vise.mass().inside(), DeviceBolts.COUNT, castIron()),
                stage,
                rows);
    }

    private List<JointBalance> device(DrawnDevice device) {
        List<JointBalance> joints = new ArrayList<>();
        DeviceRow.of(device, rows).ifPresent(row -> {
            lock(device, row).ifPresent(joints::add);
            if (device.inVise()) {
                InVise.of(setUp.id(), device, stage, rows)
                        .flatMap(grip -> body().map(grip::balance))
                        .ifPresent(balance -> joints.add(new DeviceBalance(Joint.IN_VISE, row.name(), balance)));
                joints.addAll(vise(device.vise().value()));
            } else if (row.bolted()) {
                foot().map(base -> DeviceBalance.bolted(setUp.id(), foot(device, row, base), stage, rows))
                        .ifPresent(joints::add);
            }
        });
        return joints;
    }

    private DeviceBalance.Foot foot(DrawnDevice device, DeviceRow row, Box base) {
        Optional<FixturePlate> plate = rows.row(device.device().value(), FixturePlate.class);
        return new DeviceBalance.Foot(
                row.name(),
                base,
                row.mass(),
                plate.isPresent() ? PLATE_BOLTS : DeviceBolts.COUNT,
                plate.map(this::friction).orElseGet(this::castIron));
    }

    private Friction friction(FixturePlate plate) {
        return switch (plate.madeOf()) {
            case CAST_IRON -> castIron();
            case STEEL ->
                rows.friction("friction-steel-on-cast-iron").map(Friction::of).orElse(DeviceBolts.ON_TABLE);
            case ALUMINIUM, MDF, PLYWOOD ->
                rows.friction("friction-aluminium-joint").map(Friction::of).orElse(DeviceBolts.ON_TABLE);
        };
    }

    private Friction castIron() {
        return rows.friction("friction-cast-iron-on-cast-iron")
                .map(Friction::of)
                .orElse(DeviceBolts.ON_TABLE);
    }

    private Optional<LockBalance> lock(DrawnDevice device, DeviceRow row) {
        var lock = row.lock();
        if (lock == null) {
            return Optional.empty();
        }
        var heights = stage.heights();
        boolean level = device.upright();
        Vector at = level
                ? new Vector(0, heights.depth() / 2, (heights.startTop() - heights.partBottom()) / 2)
                : new Vector(
                        device.x().value().inside() - heights.left(),
                        device.y().value().inside() - heights.front(),
                        0);
        return Optional.of(new LockBalance(
                row.name(),
                at,
                level ? Vector.RIGHT : Vector.UP,
                Given.of("lock", lock.inside(), Unit.N_M, setUp.id() + "/holding/device")));
    }

    /** What stands on the table with its foot. */
    private Optional<Box> foot() {
        return stage.fixtures().stream()
                .filter(body ->
                        carries(body.role()) && Math.abs(body.solid().box().zLow()) < 1e-9)
                .map(body -> body.solid().box())
                .reduce(Chain::more);
    }

    private static Box more(Box one, Box other) {
        return one.plan().length() * one.plan().depth()
                        >= other.plan().length() * other.plan().depth()
                ? one
                : other;
    }

    private static boolean carries(Role role) {
        return role == Role.VISE_BED || role == Role.FIXTURE || role == Role.BOARD || role == Role.ANGLE_PLATE;
    }

    /** The device itself where it is in a vise. */
    private Optional<Box> body() {
        return stage.fixtures().stream()
                .filter(body -> body.role() == Role.FIXTURE || body.role() == Role.BOARD)
                .map(Body::solid)
                .map(solid -> solid.box())
                .findFirst();
    }

    /** The joints that are not balanced, in words: what is not known of them. */
    static List<String> open(DrawnSetUp setUp, Rows rows) {
        if (setUp.holding().kind() != setwright.job.DrawnHolding.Kind.DEVICE) {
            return List.of();
        }
        DrawnDevice device = (DrawnDevice) setUp.holding();
        List<String> open = new ArrayList<>();
        boolean divides = device.on() == DeviceHolding.On.ROTARY_TABLE || device.on() == DeviceHolding.On.DIVIDING_HEAD;
        Optional<DeviceRow> row = DeviceRow.of(device, rows);
        if (divides && row.isPresent() && row.get().lock() == null) {
            open.add("the torque that the lock of the " + row.get().name() + " holds");
        }
        return open;
    }
}
