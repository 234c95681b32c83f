package setwright.window.model;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.DrawnOperation;
import setwright.job.InWords;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Standing;
import setwright.shop.Shop;
import setwright.window.state.Evaluated;
import setwright.window.state.QuickField;
import setwright.window.state.QuickFields;

/** The quick check: its fields, the small job that they make, and what that comes to. */
public final class QuickModel {
    private final QuickFields typed;
    private final QuickFields filled;
    private final QuickRows rows;
    private final QuickJob.Made made;

    /** @param beside the open job, whose machine, material and units are usual */
    public QuickModel(QuickFields typed, Shop shop, JobPlan beside) {
        this.typed = typed;
        rows = new QuickRows(shop, beside);
        filled = rows.filled(typed);
        made = QuickJob.of(filled, shop, beside.units());
    }

    /** The small job; empty while a field cannot be read. */
    public Optional<Job> job() {
        return made.job();
    }

    /**
     * What is to be seen.
     *
     * @param typing the field that somebody types in just now; null where nobody does
     * @param last what was worked out last
     */
    public Quick screen(@Nullable QuickField typing, Optional<Evaluated> last) {
        Optional<Planned> planned = last.flatMap(evaluated -> job().map(job -> new Planned(job, evaluated)));
        List<Field> fields = Arrays.stream(QuickField.values())
                .map(field -> field(field, field == typing, planned))
                .toList();
        if (!made.complaints().isEmpty()) {
            return new Quick(fields, complaint(), Badge.NONE, "", List.of(), List.of(), "", "");
        }
        return planned.filter(Planned::upToDate)
                .map(now -> answered(fields, now))
                .orElseGet(() ->
                        new Quick(fields, "", Badge.NONE, "Working it out.", List.of(), List.of(), "", assumed()));
    }

    private Quick answered(List<Field> fields, Planned planned) {
        Head head = HeadText.of(planned.findings(), "");
        return new Quick(
                fields,
                "",
                head.badge(),
                head.sentence(),
                new QuickAnswers(planned).all(),
                NextModel.open(planned.findings()).stream()
                        .map(caution -> NextModel.said(planned, caution))
                        .toList(),
                notChecked(planned),
                assumed());
    }

    private static String notChecked(Planned planned) {
        Map<String, Integer> missing = planned.findings().missing();
        return missing.isEmpty() ? "" : "Not checked: " + String.join("; ", missing.keySet()) + ".";
    }

    private String assumed() {
        return made.job()
                .map(job -> "Taken: " + InWords.blank(job.plan().blank()) + ", in the middle of the table.")
                .orElse("");
    }

    private Field field(QuickField field, boolean typing, Optional<Planned> planned) {
        String text = typing ? typed.text(field) : shown(field, planned);
        Standing standing = typed.text(field).isEmpty() ? Standing.PENCILLED : Standing.INKED;
        String said = made.complaints().getOrDefault(field, "");
        return new Field(field.key(), field.words(), text, standing, said, rows.choices(field, filled));
    }

    private String shown(QuickField field, Optional<Planned> planned) {
        String text = filled.text(field);
        if (!text.isEmpty()) {
            return text;
        }
        Optional<DrawnOperation> drawn = planned.flatMap(now -> now.operation(QuickJob.OPERATION));
        return switch (field) {
            case HOLDER -> drawn.map(operation -> operation.holder().value()).orElse("");
            case STICK_OUT ->
                drawn.map(operation -> operation.stickOut().value().text()).orElse("");
            case MACHINE, HELD, MATERIAL, HEIGHT, CUTTER, OPERATION, CUT -> "";
        };
    }

    private String complaint() {
        return Arrays.stream(QuickField.values())
                .filter(made.complaints()::containsKey)
                .map(field -> field.words() + " " + made.complaints().get(field))
                .findFirst()
                .orElse("");
    }
}
