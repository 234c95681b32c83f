package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.holding.StudForms;
import setwright.quantity.Measure;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.quantity.thread.ScrewHeads;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.ThreadRow;
import setwright.quantity.thread.Threads;
import setwright.shop.Stud;

/** Screws through holes, and the studs of straps. */
final class ScrewFigures {
    private ScrewFigures() {}

    static List<Figure> all() {
        return List.of(clearance(), stud());
    }

    private static Figure clearance() {
        return new Figure(
                "clearance-hole",
                "A screw {thread} passes a hole of",
                List.of(
                        words("thread"),
                        choice("fit", "medium", "fine", "coarse", "normal", "close", "loose")
                                .or("medium")),
                List.of("hole mm", "counterbore mm", "counterbore-depth mm"),
                ScrewFigures::hole);
    }

    private static Answered hole(Asked asked) {
        ScrewThread thread = Threads.listed().read(asked.words("thread"));
        ThreadRow row = Threads.listed()
                .row(thread)
                .filter(one -> !Double.isNaN(one.clearance().medium()))
                .orElseThrow(() -> Refusal.of(
                        "thread",
                        thread.designation()
                                + " has no clearance hole in the tables; accepted: ISO metric M1.6 to M36, UNC and UNF"
                                + " #0 to 1-1/2."));
        double mm = switch (asked.words("fit")) {
            case "fine", "close" -> row.clearance().fine();
            case "coarse", "loose" -> row.clearance().coarse();
            default -> row.clearance().medium();
        };
        Worked hole = new Table("hole", "clearance hole of the screw", Unit.MM, row.source())
                .of(thread.designation() + ", " + asked.words("fit"), mm);
        Optional<ScrewHeads.Head> head = ScrewHeads.of(thread);
        if (head.isEmpty()) {
            return Answered.of(
                            Answer.of("hole", hole, Unit.MM),
                            new Answer.Nothing("counterbore", "mm"),
                            new Answer.Nothing("counterbore-depth", "mm"))
                    .noting("no counterbore is listed for this size");
        }
        Source source = head.get().source();
        return Answered.of(
                Answer.of("hole", hole, Unit.MM),
                Answer.of(
                        "counterbore",
                        new Table("counterbore", "for a socket head cap screw", Unit.MM, source)
                                .of(head.get().size(), head.get().counterbore()),
                        Unit.MM),
                Answer.of(
                        "counterbore-depth",
                        new Table("counterbore-depth", "for a socket head cap screw", Unit.MM, source)
                                .of(head.get().size(), head.get().depth()),
                        Unit.MM));
    }

    private static Figure stud() {
        return new Figure(
                "stud",
                "A strap {strap} thick on work {work-height} high, packed up by {packing}, with {slot} of the stud {thread}"
                        + " below the table wants",
                List.of(
                        measure("slot", Measure.LENGTH),
                        measure("packing", Measure.LENGTH).from(0),
                        measure("strap", Measure.LENGTH),
                        measure("work-height", Measure.LENGTH),
                        words("thread")),
                List.of("length mm", "heel-setting mm", "spare mm", "needed mm"),
                ScrewFigures::studs);
    }

    private static Answered studs(Asked asked) {
        ScrewThread thread = Threads.listed().read(asked.words("thread"));
        Worked heel = StudForms.HEEL.of(asked.value("packing"), asked.value("work-height"));
        Worked needed = StudForms.LENGTH.of(
                asked.value("slot"),
                heel,
                asked.value("strap"),
                LoadFigures.ofThread("major diameter", thread.major(), thread),
                LoadFigures.ofThread("pitch", thread.pitch(), thread));
        Optional<Double> owned = asked.shop().all(Stud.class).stream()
                .filter(stud -> stud.thread().equals(thread.designation()))
                .flatMap(stud -> stud.lengths().stream())
                .map(setwright.quantity.Typed::inside)
                .filter(length -> length >= needed.inside() * (1 - 1e-12))
                .min(Comparator.naturalOrder());
        double length = owned.orElse(needed.inside());
        Answered answered = Answered.of(
                Answer.of("length", length, Unit.MM),
                Answer.of("heel-setting", heel, Unit.MM),
                Answer.of("spare", length - needed.inside(), Unit.MM),
                Answer.of("needed", needed, Unit.MM));
        return answered.noting(
                owned.isPresent()
                        ? "the shortest stud of the shop that is long enough; heel level with the work or slightly high"
                        : "the shop has no stud " + thread.designation() + " so long: the length is what is needed");
    }
}
