package setwright.plan;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.cut.CutPlan;
import setwright.plan.hold.HoldPlan;
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
        TimePlan time,
        ChoicePlan choose) {

    public Job job() {
        return drawnUp.job();
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
