package setwright.plan;

import java.util.Optional;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.choose.Choices;
import setwright.plan.cut.CutPlan;
import setwright.plan.cut.Cuts;
import setwright.plan.hold.HoldPlan;
import setwright.plan.hold.Holds;
import setwright.plan.index.IndexPlan;
import setwright.plan.index.Indexes;
import setwright.plan.part.PartPlan;
import setwright.plan.part.Stages;
import setwright.plan.pencil.Pencil;
import setwright.plan.place.PlacePlan;
import setwright.plan.place.Places;
import setwright.plan.room.RoomPlan;
import setwright.plan.room.Rooms;
import setwright.plan.time.TimePlan;
import setwright.plan.time.Times;
import setwright.shop.Shop;

/** Draws a job up and works it out: job and shop in, plan out, the same for the same. */
public final class Planner {
    private Planner() {}

    public static Plan plan(Job job, Shop shop) {
        return plan(job, shop, Optional.empty());
    }

    /** The same plan, sooner: what an edit did not touch keeps the answer that it had in the plan before the edit. */
    public static Plan after(Plan before, Job job, Shop shop) {
        return plan(job, shop, Optional.of(before));
    }

    private static Plan plan(Job job, Shop shop, Optional<Plan> earlier) {
        Rows rows = Rows.of(job, shop);
        Optional<Plan> before = earlier.filter(plan -> plan.rows().alike(rows));
        DrawnUp drawnUp = Pencil.drawUp(job, rows);
        PartPlan part = Stages.of(drawnUp, rows);
        CutPlan cut = Cuts.of(drawnUp, rows, part);
        HoldPlan hold = Holds.of(
                drawnUp, rows, part, cut, before.map(plan -> plan.hold().kept()).orElseGet(Kept::none));
        RoomPlan room = Rooms.of(
                drawnUp, rows, part, before.map(plan -> plan.room().kept()).orElseGet(Kept::none));
        PlacePlan place = Places.of(drawnUp, rows, part, cut);
        IndexPlan index = Indexes.of(drawnUp, rows);
        TimePlan time = Times.of(drawnUp, rows, part, cut, room);
        ChoicePlan choose = Choices.of(drawnUp, rows);
        return new Plan(drawnUp, rows, part, cut, hold, room, place, index, time, choose);
    }
}
