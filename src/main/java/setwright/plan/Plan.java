package setwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.cut.CutPlan;
import setwright.plan.cut.DepthAdvice;
import setwright.plan.cut.LimitRule;
import setwright.plan.cut.LimitRules;
import setwright.plan.hold.GripRange;
import setwright.plan.hold.GripRanges;
import setwright.plan.hold.HoldPlan;
import setwright.plan.index.IndexPlan;
import setwright.plan.part.PartPlan;
import setwright.plan.place.PlacePlan;
import setwright.plan.room.RoomPlan;
import setwright.plan.time.TimePlan;

/** A job worked out: what every sub-room found. Immutable; it only gathers. */
public record Plan(
        DrawnUp drawnUp,
        Rows rows,
        PartPlan part,
        CutPlan cut,
        HoldPlan hold,
        RoomPlan room,
        PlacePlan place,
        IndexPlan index,
        TimePlan time,
        ChoicePlan choose) {

    /** The same with what takes longer worked out too; see {@link CutPlan#settled}. Itself where there is nothing to add. */
    public Plan settled(Optional<Plan> before) {
        CutPlan settled = cut.settled(before.map(Plan::cut));
        return settled == cut ? this : new Plan(drawnUp, rows, part, settled, hold, room, place, index, time, choose);
    }

    public Job job() {
        return drawnUp.job();
    }

    /** How far each choice of an operation can go before each limit binds; searched for anew at every call. */
    public List<LimitRule> limitRules(String operation) {
        return LimitRules.of(drawnUp, rows, part, operation);
    }

    /** How deep a pass of a milled operation may be, and how deep the pencil takes it; searched for anew at every call. */
    public Optional<DepthAdvice> depthAdvice(String operation) {
        return LimitRules.depth(drawnUp, rows, part, operation);
    }

    /** How hard a set-up is held at least and at most; searched for anew at every call. */
    public Optional<GripRange> gripRange(String setUp) {
        return GripRanges.of(drawnUp, rows, part, cut, hold, setUp);
    }

    /** Everything that no sub-room could work out, with what it would need. */
    public List<NotChecked> notChecked() {
        List<NotChecked> all = new ArrayList<>();
        all.addAll(part.notChecked());
        all.addAll(cut.notChecked());
        all.addAll(hold.notChecked());
        all.addAll(room.notChecked());
        all.addAll(place.notChecked());
        all.addAll(time.notChecked());
        return all;
    }
}
