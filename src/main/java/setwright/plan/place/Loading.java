package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.location.Contributor;
import setwright.location.HoleErrors;
import setwright.location.budget.AxisErrors;
import setwright.location.budget.DatumWay;
import setwright.location.budget.Reloading;
import setwright.location.budget.Seating;
import setwright.plan.Rows;
import setwright.shop.Axis;
import setwright.shop.Machine;
import setwright.shop.RotaryTable;

/** One loading of the part on this machine: how its zero is found, how it comes to lie, how its slides are read. */
public record Loading(DrawnSetUp setUp, Rows rows) {
    /** A dividing head's crank set in a hole of its plate: worm and plate together, 1 minute of arc (common practice). */
    private static final double HEAD_INDEX = Math.toRadians(1.0 / 60);

    public DatumWay datum() {
        return datum(setUp.datum());
    }

    private static DatumWay datum(ZeroFinding way) {
        return switch (way) {
            case EDGES -> DatumWay.EDGE_FINDER;
            case BETWEEN_EDGES -> DatumWay.BETWEEN_EDGES;
            case JAW_AND_STOP -> DatumWay.JAW_AND_STOP;
            case BORE_SWEPT -> DatumWay.BORE_INDICATED;
            case SCRIBED_LINES -> DatumWay.SCRIBED_LINES;
            case DEVICE_CENTRE -> DatumWay.DEVICE_CENTRE;
        };
    }

    /** How far a part comes to lie from where the first one lay, mm. */
    public double reload() {
        return reloading().halfWidth();
    }

    /** In a batch each part comes to what locates it; a single one is found where it lies. */
    public Reloading reloading() {
        if (rows.job().plan().numberOff() == 1) {
            return Reloading.CLOCKED;
        }
        return switch (setUp.holding().kind()) {
            case VISE -> inVise((DrawnVise) setUp.holding());
            case DEVICE -> onDevice((DrawnDevice) setUp.holding());
            case TABLE -> Reloading.CLOCKED;
        };
    }

    private Reloading inVise(DrawnVise vise) {
        boolean foundAnew = setUp.datum() != ZeroFinding.JAW_AND_STOP
                && setUp.datum() != ZeroFinding.EDGES
                && setUp.datum() != ZeroFinding.BETWEEN_EDGES;
        if (foundAnew) {
            return Reloading.CLOCKED;
        }
        return vise.jawCut().value() == ViseHolding.JawCut.UNCUT ? Reloading.JAW_AND_STOP : Reloading.SOFT_JAWS;
    }

    private static Reloading onDevice(DrawnDevice device) {
        return switch (device.located().value()) {
            case DOWELS -> Reloading.DOWELS;
            case POCKET -> Reloading.POCKET;
            case EDGES, CENTRE -> Reloading.CLOCKED;
        };
    }

    Contributor loading() {
        return Contributor.eachAxis("loading the part", reload(), reloading().source())
                .halvedBy(
                        reloading() == Reloading.CLOCKED
                                ? "indicating each part after loading"
                                : reloading().halvedBy());
    }

    /** The worse read of the two slides of the table. */
    public boolean byDial() {
        Machine machine = rows.machine();
        return machine.x().read() == Axis.ReadBy.DIAL || machine.y().read() == Axis.ReadBy.DIAL;
    }

    AxisErrors table() {
        Machine machine = rows.machine();
        return byDial()
                ? AxisErrors.dial(
                        Math.max(
                                machine.x().division().inside(),
                                machine.y().division().inside()),
                        false)
                : AxisErrors.READOUT;
    }

    AxisErrors knee() {
        Axis knee = rows.machine().knee();
        return knee.read() == Axis.ReadBy.DIAL ? AxisErrors.dial(knee.division().inside(), true) : AxisErrors.READOUT;
    }

    /** What puts a hole of this loading out of place. */
    public HoleErrors hole(boolean bored) {
        HoleErrors read = byDial() ? HoleErrors.byDial().set(table().reading()) : HoleErrors.byReadout();
        HoleErrors errors = read.found(datum().halfWidth()).loaded(reload());
        return bored ? errors.bored() : errors;
    }

    /** What an indexing device adds at a radius; nothing on any other holding. */
    List<Contributor> index(double radius) {
        List<Contributor> found = new ArrayList<>();
        if (setUp.holding().kind() == DrawnHolding.Kind.DEVICE && radius > 0) {
            DrawnDevice device = (DrawnDevice) setUp.holding();
            if (device.on() == DeviceHolding.On.ROTARY_TABLE) {
                rows.row(device.device().value(), RotaryTable.class)
                        .ifPresent(row ->
                                found.add(Seating.index(radius, row.division().inside() / 2)));
            } else if (device.on() == DeviceHolding.On.DIVIDING_HEAD) {
                found.add(Seating.index(radius, HEAD_INDEX));
            }
        }
        return found;
    }
}
