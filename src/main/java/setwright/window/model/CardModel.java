package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Block;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.JobPlan;
import setwright.job.OperationField;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.shop.ShopRow;
import setwright.window.state.Selection;
import setwright.window.state.Session;

/** The card of the chosen set-up: the part, what holds it, and its operations as lines. */
public final class CardModel {
    private final Planned planned;

    private CardModel(Planned planned) {
        this.planned = planned;
    }

    public static Card of(Planned planned, Session session) {
        CardModel model = new CardModel(planned);
        Selection at = session.selection();
        List<Line> lines = new ArrayList<>();
        lines.add(model.part());
        planned.setUp(at.setUp()).ifPresent(setUp -> {
            lines.add(model.holding(setUp));
            setUp.operations().forEach(operation -> lines.add(model.operation(operation)));
        });
        boolean there = lines.stream().anyMatch(line -> line.key().equals(at.line()));
        return new Card(lines, there ? at.line() : "", there ? LineModel.unfolded(planned, session) : Unfolded.NOTHING);
    }

    private Line part() {
        JobPlan plan = planned.job().plan();
        Block block = PartPlace.block(plan);
        String material = planned.plan().rows().material().name();
        String size = block.length().nominal().text() + " x "
                + block.depth().nominal().text() + " x "
                + block.height().nominal().text();
        String machine = planned.plan().rows().all(setwright.shop.Machine.class).stream()
                .filter(row -> row.id().equals(plan.machine().machine()))
                .map(ShopRow::name)
                .findFirst()
                .orElse(plan.machine().machine());
        return new Line(
                Selection.PART,
                List.of(Span.plain(plan.title().part() + ", " + plan.numberOff() + " off")),
                List.of(Span.plain(Times.text(planned.plan().time().batch(), planned.printing()) + " in all")),
                List.of(Span.plain(material + ", " + size + "; " + machine)),
                Badges.of(planned.findings(), caution -> caution.setUp().isEmpty()));
    }

    private Line holding(DrawnSetUp setUp) {
        return new Line(
                Selection.HOLDING,
                HoldingWords.grip(planned, setUp),
                List.of(),
                HoldingWords.packing(planned, setUp),
                Badges.of(
                        planned.findings(),
                        caution -> caution.setUp().equals(setUp.id())
                                && caution.operation().isEmpty()));
    }

    private Line operation(DrawnOperation operation) {
        return new Line(
                operation.id(),
                List.of(Span.plain(planned.words().full(operation))),
                pace(operation),
                with(operation),
                Badges.of(planned.findings(), caution -> caution.operation().equals(operation.id())));
    }

    private List<Span> pace(DrawnOperation operation) {
        Drawn<Typed<SpindleSpeed>> speed = planned.value(operation, OperationField.SPEED);
        Drawn<Typed<Speed>> feed = planned.value(operation, OperationField.FEED);
        List<Span> spans = new ArrayList<>();
        if (planned.value(operation, OperationField.METHOD).value().byHand()
                && speed.value().inside() == 0) {
            spans.add(Span.value("by hand", speed.standing()));
        } else {
            spans.add(Span.value(speed.value().text(), speed.standing()));
            spans.add(Span.plain("   "));
            spans.add(Span.value(feed.value().text(), feed.standing()));
        }
        planned.plan()
                .time()
                .operation(operation.id())
                .ifPresent(time -> spans.add(Span.plain("   " + Times.text(time.whole(), planned.printing()))));
        return spans;
    }

    private List<Span> with(DrawnOperation operation) {
        Drawn<String> cutter = planned.value(operation, OperationField.CUTTER);
        Drawn<String> holder = planned.value(operation, OperationField.HOLDER);
        Drawn<Typed<Length>> stickOut = planned.value(operation, OperationField.STICK_OUT);
        return List.of(
                Span.value(planned.words().row(cutter.value()), cutter.standing()),
                Span.plain(" in "),
                Span.value(planned.words().row(holder.value()), holder.standing()),
                Span.plain(", "),
                Span.value(stickOut.value().text(), stickOut.standing()),
                Span.plain(" out"));
    }
}
