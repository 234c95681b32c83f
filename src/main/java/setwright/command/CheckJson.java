package setwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.file.RowNote;
import setwright.file.json.Json;
import setwright.file.json.Problem;
import setwright.file.json.Tree;
import setwright.file.shape.WrittenNames;
import setwright.job.DrawnSetUp;
import setwright.job.JobRecord;
import setwright.plan.NotChecked;
import setwright.plan.room.SetUpRoom;
import setwright.plan.time.TimePlan;
import setwright.quantity.Unit;

/** The check's answer for one job as JSON; its schema is {@code check.schema.json}. */
final class CheckJson {
    private final JobCheck.Worked check;
    private final Severity least;

    private CheckJson(JobCheck.Worked check, Severity least) {
        this.check = check;
        this.least = least;
    }

    /** @param least cautions less severe than this are left out */
    static Tree of(JobCheck check, Severity least) {
        return check instanceof JobCheck.Worked worked
                ? new CheckJson(worked, least).job()
                : unreadable((JobCheck.Unreadable) check);
    }

    private static Tree unreadable(JobCheck.Unreadable check) {
        return Json.object()
                .put("file", check.file())
                .put(
                        "problems",
                        Json.array(check.problems().stream()
                                .map(CheckJson::problem)
                                .toList()))
                .build();
    }

    private static Tree problem(Problem problem) {
        return Json.object()
                .put("line", problem.line())
                .put("column", problem.column())
                .put("message", problem.message())
                .build();
    }

    private Tree job() {
        return Json.object()
                .put("job", check.plan().job().plan().title().part())
                .put("file", check.file())
                .put(
                        "setUps",
                        Json.array(check.plan().drawnUp().setUps().stream()
                                .map(this::setUp)
                                .toList()))
                .put("time", time(check.plan().time()))
                .put(
                        "budgets",
                        Json.array(check.plan().place().budgets().stream()
                                .map(BudgetJson::tree)
                                .toList()))
                .put("cautions", Json.array(cautions()))
                .put(
                        "notChecked",
                        Json.array(check.findings().notChecked().stream()
                                .map(CheckJson::notChecked)
                                .toList()))
                .build();
    }

    private static Json.ObjectBuilder time(TimePlan time) {
        return Json.object()
                .put("setUp", minutes(time.setUp()))
                .put("each", minutes(time.each()))
                .put("batch", minutes(time.batch()));
    }

    private static @Nullable Double minutes(double seconds) {
        return OperationJson.finite(Unit.MINUTE.fromInside(seconds));
    }

    private Tree setUp(DrawnSetUp setUp) {
        Optional<SetUpRoom> room = check.plan().room().setUp(setUp.id());
        return Json.object()
                .put("id", setUp.id())
                .put("title", setUp.title())
                .put("holding", WrittenNames.constant(setUp.holding().kind()))
                .put("holdFactor", weakest(setUp))
                .put(
                        "kneeHeights",
                        OperationJson.count(room.map(one -> one.kneeHeights().size())))
                .put("touchOffs", OperationJson.count(room.map(SetUpRoom::touchOffs)))
                .put(
                        "operations",
                        Json.array(setUp.operations().stream()
                                .map(operation -> new OperationJson(check.plan(), operation).tree())
                                .toList()))
                .build();
    }

    /** The least over its operations, of either outlook. */
    private Tree weakest(DrawnSetUp setUp) {
        return OperationJson.holdFactor(check.plan().hold().operations().stream()
                .filter(hold -> hold.setUp().equals(setUp.id()))
                .map(hold -> hold.factor())
                .toList());
    }

    private List<Tree> cautions() {
        List<Tree> all = new ArrayList<>();
        for (Findings.Judged judged : check.findings().judged()) {
            if (judged.caution().severity().compareTo(least) <= 0) {
                all.add(caution(judged));
            }
        }
        if (least == Severity.NOTE) {
            check.rows().forEach(row -> all.add(row(row)));
        }
        return all;
    }

    private Tree caution(Findings.Judged judged) {
        Caution caution = judged.caution();
        Found found = Found.of(caution);
        return Json.object()
                .put("slug", caution.slug())
                .put("severity", caution.severity().written())
                .put("setUp", orNull(caution.setUp()))
                .put("operation", orNull(caution.operation()))
                .put("subject", orNull(caution.subject()))
                .put("subjectText", orNull(caution.subjectText()))
                .put("value", found.value())
                .put("limit", found.limit())
                .put("unit", found.unit())
                .put("message", caution.message())
                .put(
                        "remedies",
                        Json.array(check.remedies(caution).stream()
                                .map(CheckJson::remedy)
                                .toList()))
                .put("accepted", judged.accepted().map(CheckJson::accepted).orElse(Json.nothing()))
                .build();
    }

    private static Tree row(RowNote note) {
        return Json.object()
                .put("slug", note.slug())
                .put("severity", Severity.NOTE.written())
                .putNull("setUp")
                .putNull("operation")
                .put("subject", note.copy().id())
                .put("subjectText", note.copy().name())
                .putNull("value")
                .putNull("limit")
                .putNull("unit")
                .put("message", RowWords.of(note))
                .put("remedies", Json.array(List.of()))
                .putNull("accepted")
                .build();
    }

    private static Tree remedy(Remedy remedy) {
        return Json.object()
                .put("text", remedy.text())
                .put("clears", remedy.clears())
                .put(
                        "adds",
                        Json.texts(remedy.adds().stream()
                                .map(Caution::slug)
                                .distinct()
                                .toList()))
                .build();
    }

    private static Tree accepted(JobRecord.Acceptance acceptance) {
        return Json.object()
                .put("by", acceptance.by())
                .put("role", WrittenNames.constant(acceptance.role()))
                .put("reason", acceptance.reason())
                .put("at", acceptance.at())
                .put("value", number(acceptance.value()))
                .build();
    }

    private static @Nullable Double number(String text) {
        try {
            return OperationJson.finite(Double.parseDouble(text));
        } catch (NumberFormatException none) {
            return null;
        }
    }

    private static Tree notChecked(NotChecked what) {
        return Json.object()
                .put("slug", what.check())
                .put("setUp", orNull(what.setUp()))
                .put("operation", orNull(what.operation()))
                .put("needs", what.needs())
                .build();
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
