package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.job.JobPlan;
import setwright.job.Tilt;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/** The steps of a job at the machine, in order: what the plan asks, and what every set-up asks. */
public final class Steps {
    private Steps() {}

    public static List<Step> of(Plan plan, Printing printing) {
        Shown shown = new Shown(plan, printing);
        List<Step> steps = new ArrayList<>();
        JobPlan job = plan.job().plan();
        steps.add(new Writer("job", "")
                .step(
                        "drawing",
                        Step.Kind.READ,
                        "Drawing " + job.title().drawing() + " revision "
                                + job.title().revision() + ". Material "
                                + plan.rows().material().name() + ". "
                                + job.numberOff() + " off.")
                .doing("hold it beside the drawing in hand")
                .checking("revision and material are the same")
                .holding()
                .written());
        boolean swivelled = false;
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            steps.addAll(new SetUpSteps(shown, setUp, swivelled).steps());
            Tilt tilt = setUp.tilt();
            swivelled = tilt != null && tilt.by() == Tilt.By.HEAD;
        }
        return List.copyOf(steps);
    }

    /** Writes one step after the other of a set-up or an operation. */
    static final class Writer {
        private final String setUp;
        private final String operation;
        private String id = "";
        private Step.Kind kind = Step.Kind.READ;
        private int hole;
        private String text = "";
        private String act = "";
        private String check = "";
        private String bites = "";
        private boolean holds;

        Writer(String setUp, String operation) {
            this.setUp = setUp;
            this.operation = operation;
        }

        Writer step(String name, Step.Kind ofKind, String words) {
            id = setUp + (operation.isEmpty() ? "" : "/" + operation) + "/" + name;
            kind = ofKind;
            text = Words.atMost(Step.WORDS, words);
            act = "";
            check = "";
            bites = "";
            hole = 0;
            holds = false;
            return this;
        }

        Writer doing(String words) {
            act = words;
            return this;
        }

        Writer checking(String words) {
            check = words;
            return this;
        }

        Writer biting(String words) {
            bites = words;
            return this;
        }

        Writer inHole(int number) {
            hole = number;
            return this;
        }

        Writer holding() {
            holds = true;
            return this;
        }

        Step written() {
            String of = setUp.equals("job") ? "" : setUp;
            return new Step(id, kind, of, operation, hole, text, act, check, bites, holds);
        }
    }
}
