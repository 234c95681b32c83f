package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.job.DrawnSetUp;
import setwright.job.JobRecord;
import setwright.sheet.Step;
import setwright.sheet.Steps;

/** The steps at the machine, a page each; it opens at the first that is not done. */
public final class WalkModel {
    /** Part that the ticks are for: the first, until parts are counted. */
    public static final int PART = 1;

    private final Planned planned;
    private final List<Step> steps;

    public WalkModel(Planned planned) {
        this.planned = planned;
        this.steps = Steps.of(planned.plan(), planned.printing());
    }

    /** @param asked number of the step from 1; 0: the first that is not done */
    public Walk page(int asked) {
        if (steps.isEmpty()) {
            return Walk.EMPTY;
        }
        int number = asked == 0 ? firstOpen() : Math.max(1, Math.min(asked, steps.size()));
        Step step = steps.get(number - 1);
        return new Walk(
                number,
                steps.size(),
                setUp(step),
                step.operation(),
                step.text(),
                step.act(),
                step.check(),
                step.bitesHere(),
                step.holds(),
                tick(step).map(tick -> tick.by() + ", " + tick.at()).orElse(""));
    }

    /** What is to be seen: of the whole job its first set-up. */
    private String setUp(Step step) {
        return step.setUp().isEmpty()
                ? planned.plan().drawnUp().setUps().stream()
                        .findFirst()
                        .map(DrawnSetUp::id)
                        .orElse("")
                : step.setUp();
    }

    /** The id of a step by its number from 1; empty where there is none. */
    public Optional<String> id(int number) {
        return number >= 1 && number <= steps.size()
                ? Optional.of(steps.get(number - 1).id())
                : Optional.empty();
    }

    private int firstOpen() {
        for (int i = 0; i < steps.size(); i++) {
            if (tick(steps.get(i)).isEmpty()) {
                return i + 1;
            }
        }
        return steps.size();
    }

    private Optional<JobRecord.Tick> tick(Step step) {
        return planned.job().record().ticks().stream()
                .filter(tick -> tick.step().equals(step.id()) && tick.part() == PART)
                .reduce((earlier, later) -> later);
    }
}
