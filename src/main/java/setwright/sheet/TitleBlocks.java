package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.InWords;
import setwright.job.JobPlan;
import setwright.plan.Plan;
import setwright.plan.time.TimePlan;
import setwright.shop.ShopRow;

/** What the sheet starts with: the usual cautions, the title block, the machine as it stands, the times. */
final class TitleBlocks {
    private final Shown shown;
    private final Plan plan;

    TitleBlocks(Shown shown) {
        this.shown = shown;
        plan = shown.plan();
    }

    List<Block> blocks() {
        return List.of(
                Block.Words.of(
                        "Guards in place, eye protection on; no gloves, loose sleeves or rings at a turning spindle."
                                + " Local rules and the machine's manual come first. This sheet is a plan: a competent"
                                + " person at the machine decides."),
                new Block.Pairs(title()),
                new Block.Heading("Machine as it stands"),
                new Block.Pairs(machine()),
                new Block.Heading("Time"),
                new Block.Pairs(times()));
    }

    private List<Block.Pair> title() {
        JobPlan job = plan.job().plan();
        List<Block.Pair> pairs = new ArrayList<>();
        pairs.add(pair("part", job.title().part()));
        pairs.add(pair(
                "drawing", job.title().drawing() + ", revision " + job.title().revision()));
        pairs.add(pair("material", plan.rows().material().name()));
        pairs.add(pair("blank", InWords.blank(job.blank())));
        pairs.add(pair("number off", Integer.toString(job.numberOff())));
        return pairs;
    }

    private List<Block.Pair> machine() {
        var stands = plan.job().plan().machine();
        List<String> clockedIn = stands.clockedIn().stream().map(this::name).toList();
        String trammed = stands.headTrammed();
        return List.of(
                pair("machine", plan.rows().machine().name()),
                pair("clocked in", clockedIn.isEmpty() ? "nothing" : String.join(", ", clockedIn)),
                pair("head trammed", trammed == null ? "nobody knows when: tram it before the first cut" : trammed));
    }

    private String name(String id) {
        return plan.rows().shop().row(id).map(ShopRow::name).orElse(id);
    }

    private List<Block.Pair> times() {
        TimePlan time = plan.time();
        return List.of(
                pair("setting up", shown.minutes(time.setUp())),
                pair("each part", shown.minutes(time.each())),
                pair("all " + plan.job().plan().numberOff(), shown.minutes(time.batch())));
    }

    private static Block.Pair pair(String name, String text) {
        return new Block.Pair(name, text);
    }
}
