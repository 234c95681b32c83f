package setwright.file;

import java.util.List;
import java.util.stream.Stream;
import setwright.file.json.Problems;
import setwright.file.shape.HalfRead;
import setwright.file.shape.Shape.Found;
import setwright.job.ArcSlot;
import setwright.job.Corner;
import setwright.job.DeviceHolding;
import setwright.job.Divided;
import setwright.job.Flats;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.Marks;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.RoughBody;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.StopAt;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.Tilt;
import setwright.job.ViseHolding;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Adhesive;
import setwright.shop.Axis;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.EdgeClamp;
import setwright.shop.EndMill;
import setwright.shop.FaceMill;
import setwright.shop.FrictionPair;
import setwright.shop.HandTime;
import setwright.shop.Holder;
import setwright.shop.Kept;
import setwright.shop.LinearEdge;
import setwright.shop.Machine;
import setwright.shop.MachineTable;
import setwright.shop.Mandrel;
import setwright.shop.Reamer;
import setwright.shop.StiffnessBand;
import setwright.shop.Tailstock;
import setwright.shop.Tap;
import setwright.shop.TiltBand;
import setwright.shop.VeeJaws;
import setwright.shop.Vise;
import setwright.shop.WorkChuck;

/** Which numbers may be negative or zero, how large counts may be, and which numbers rise from one to the next. */
final class NumberRules {
    /** 100 m: no length in a shop is longer, and a unit was meant otherwise. */
    private static final double LONGEST = 1e5;

    static final List<Component> ANY_SIGN = all(
            Component.of(Pattern.Place.class, "u", "v"),
            Component.of(Pattern.Line.class, "angle"),
            Component.of(Pattern.BoltCircle.class, "start"),
            Component.of(Placed.class, "u", "v", "angle"),
            Component.of(Corner.class, "u", "v"),
            Component.of(ArcSlot.class, "from", "to"),
            Component.of(RoughBody.TouchPoint.class, "u", "v"),
            Component.of(SetUp.NamedZero.class, "x", "y"),
            Component.of(Tilt.class, "angle"),
            Component.of(ViseHolding.class, "offset"),
            Component.of(TableHolding.class, "x", "y"),
            Component.of(DeviceHolding.class, "x", "y", "angle"),
            Component.of(Strapping.class, "u", "v", "toward", "heelOver"),
            Component.of(StopAt.class, "along"));

    static final List<Component> ZERO_OR_MORE = all(
            Component.of(ViseHolding.class, "jawCutDepth", "parallelInset", "apart"),
            Component.of(TableHolding.class, "packingHeight"),
            Component.of(RoughBody.TouchPoint.class, "below"),
            Component.of(Axis.class, "backlash"),
            Component.of(Machine.class, "noseLow"),
            Component.of(EndMill.class, "helix"),
            Component.of(LinearEdge.class, "tangentialEdge", "radialEdge", "axialEdge"),
            Component.of(FaceMill.class, "leadAngle"),
            Component.of(Reamer.class, "bevel"),
            Component.of(Holder.class, "projection", "runOutLow", "runOutHigh"),
            Component.of(Operation.class, "finish"),
            Component.of(EdgeClamp.class, "down"),
            Component.of(HandTime.class, "time"));

    static final List<Range> RANGES = List.of(
            new Range(JobPlan.class, "numberOff", 1, 100_000),
            new Range(SetUp.class, "quarterTurns", 0, 3),
            new Range(Pattern.Grid.class, "columns", 1, 1_000),
            new Range(Pattern.Grid.class, "rows", 1, 1_000),
            new Range(Pattern.Line.class, "count", 1, 1_000),
            new Range(Pattern.BoltCircle.class, "count", 1, 10_000),
            new Range(Flats.class, "count", 1, 100),
            new Range(Divided.class, "count", 2, 10_000),
            new Range(Marks.class, "longEvery", 1, 10_000),
            new Range(Marks.class, "middleEvery", 1, 10_000),
            new Range(ViseHolding.class, "parts", 1, 50),
            new Range(ViseHolding.class, "vises", 1, 8),
            new Range(JobRecord.Tick.class, "part", 1, 100_000),
            new Range(JobRecord.ReadingTaken.class, "part", 1, 100_000),
            new Range(Kept.class, "owned", Kept.NOT_COUNTED, 100_000),
            new Range(MachineTable.class, "slots", 0, 100),
            new Range(WorkChuck.class, "jaws", 2, 8),
            new Range(Cutter.class, "teeth", 1, 200),
            new Range(Tap.class, "leadThreads", 1, 100));

    static final List<List<Component>> RISING = List.of(
            Component.of(Size.class, "least", "greatest"),
            Component.of(StiffnessBand.class, "low", "expected", "high"),
            Component.of(TiltBand.class, "low", "expected", "high"),
            Component.of(FrictionPair.class, "pessimistic", "expected", "high"),
            Component.of(Vise.class, "snug", "firm", "hard"),
            Component.of(Adhesive.class, "shearLow", "shear"),
            Component.of(Adhesive.class, "pullLow", "pull"),
            Component.of(WorkChuck.class, "gripLow", "grip"),
            Component.of(WorkChuck.class, "least", "greatest"),
            Component.of(Tailstock.class, "centreLow", "centreHigh"),
            Component.of(Mandrel.class, "least", "greatest"),
            Component.of(Mandrel.class, "torqueLow", "torque"),
            Component.of(Vise.class, "openingInboard", "openingOutboard"),
            Component.of(VeeJaws.class, "least", "greatest"),
            Component.of(Holder.class, "shankLeast", "shankGreatest"),
            Component.of(Holder.class, "runOutLow", "runOutHigh"),
            Component.of(Machine.class, "noseLow", "noseHigh"),
            Component.of(Machine.class, "speedLeast", "speedGreatest"),
            Component.of(Machine.class, "steps"),
            Component.of(Axis.class, "feedLeast", "feedGreatest"),
            Component.of(Cutter.class, "fluteLength", "overallLength"),
            Component.of(CuttingSpeed.class, "speed", "speedHigh"));

    private final Problems problems;

    NumberRules(Problems problems) {
        this.problems = problems;
    }

    /** A count and the values that it may have. */
    record Range(Component component, int least, int greatest) {
        Range(Class<?> owner, String key, int least, int greatest) {
            this(new Component(owner, key), least, greatest);
        }
    }

    @SafeVarargs
    private static List<Component> all(List<Component>... some) {
        return Stream.of(some).flatMap(List::stream).toList();
    }

    void check(HalfRead record) {
        record.values().forEach((key, found) -> found.forEach(value -> number(record, key, value)));
        RISING.stream().filter(rising -> rising.get(0).in(record)).forEach(rising -> order(record, rising));
    }

    private void number(HalfRead record, String key, Found found) {
        if (found.value() instanceof Typed<?> typed) {
            amount(record, key, found, typed);
        }
        if (found.value() instanceof Integer count) {
            RANGES.stream()
                    .filter(range -> range.component().is(record, key))
                    .filter(range -> count < range.least() || count > range.greatest())
                    .forEach(
                            range -> report(found, "a whole number from " + range.least() + " to " + range.greatest()));
        }
    }

    private void amount(HalfRead record, String key, Found found, Typed<?> typed) {
        boolean anySign = ANY_SIGN.stream().anyMatch(component -> component.is(record, key));
        boolean mayBeZero = ZERO_OR_MORE.stream().anyMatch(component -> component.is(record, key));
        if (typed.value() instanceof Length && Math.abs(typed.inside()) > LONGEST) {
            report(found, "a length of at most 100 m");
        } else if (!anySign && mayBeZero && typed.inside() < 0) {
            report(found, "zero or more");
        } else if (!anySign && !mayBeZero && typed.inside() <= 0) {
            report(found, "more than zero");
        }
    }

    private void report(Found found, String accepted) {
        problems.add(
                found.tree().at(),
                found.path(),
                "Found " + found.tree().found() + "; accepted here: " + accepted + ".");
    }

    private void order(HalfRead record, List<Component> rising) {
        List<Found> numbers = rising.stream()
                .flatMap(component -> record.all(component.key()).stream())
                .toList();
        for (int i = 1; i < numbers.size(); i++) {
            Found smaller = numbers.get(i - 1);
            Found larger = numbers.get(i);
            if (((Typed<?>) smaller.value()).inside() > ((Typed<?>) larger.value()).inside()) {
                problems.add(
                        larger.tree().at(),
                        larger.path(),
                        "Found " + larger.tree().found() + ", which is less than "
                                + smaller.tree().found() + " of " + smaller.path()
                                + "; accepted here: as much or more.");
            }
        }
    }
}
