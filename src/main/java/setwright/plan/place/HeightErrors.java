package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.location.Contributor;
import setwright.location.TouchOff;
import setwright.location.angle.HeadTilt;
import setwright.location.budget.AxisErrors;
import setwright.location.budget.Seating;
import setwright.plan.cut.CutPlan;
import setwright.quantity.Source;
import setwright.shop.Cutter;

/** What puts a size out that is got by height: touching off, knee, seat, hollow of a leaning head, spring. */
record HeightErrors(Loading loading, Making making, CutPlan cut) {
    private static final Source COMMON = Source.of("common practice");

    /** From the seat of the part up to a face. */
    List<Contributor> across(AxisErrors axis) {
        List<Contributor> all = new ArrayList<>();
        all.add(Seating.seat());
        all.addAll(below(axis));
        return all;
    }

    /** From the surface down, which may be cut by another tool before. */
    List<Contributor> depth(AxisErrors axis) {
        List<Contributor> all = new ArrayList<>(below(axis));
        if (facedBefore()) {
            all.add(touchOff("touching off the facing cutter"));
        }
        return all;
    }

    private List<Contributor> below(AxisErrors axis) {
        List<Contributor> all = new ArrayList<>();
        all.add(touchOff("touching off the tool"));
        all.addAll(axis.contributors());
        double hollow = dish();
        if (hollow > 0) {
            all.add(Contributor.bias(
                            "hollow of a leaning head",
                            hollow,
                            Source.of("common practice: head within 0.001 in on 6 in"))
                    .halvedBy("tramming the head closer"));
        }
        all.addAll(Leaves.of(cut, making.operation().id()));
        return all;
    }

    private static Contributor touchOff(String name) {
        return Contributor.oneDirection(name, TouchOff.EACH, COMMON)
                .halvedBy("measuring the depth and taking the last of it by that");
    }

    private double dish() {
        DrawnOperation operation = making.operation();
        if (operation.kind() != Operation.Kind.FACE) {
            return 0;
        }
        double diameter = loading.rows()
                .cutter(operation.cutter().value())
                .map(Cutter::diameter)
                .map(size -> size.inside())
                .orElse(0.0);
        double width = Math.min(operation.width().value().inside(), diameter);
        return HeadTilt.dish(diameter, width, Seating.HEAD);
    }

    private boolean facedBefore() {
        return making.setUp().operations().stream()
                .takeWhile(earlier -> !earlier.id().equals(making.operation().id()))
                .anyMatch(earlier -> earlier.kind() == Operation.Kind.FACE);
    }
}
