package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.cutting.TrialCuts;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.job.DrawnOperation;
import setwright.plan.cut.HoleWork;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.shop.HeadDial;

/** The cuts of a boring head with what its dial reads for each, from nought where the bar just touches the bore. */
record BoringWords(Shown shown, DrawnOperation operation, HoleWork work) {
    /** One line for the sheet. */
    String line() {
        return "cuts: "
                + work.trials().stream().map(cut -> before(cut) + cut(cut)).collect(Collectors.joining(", "))
                + "; " + counting();
    }

    /** A step for the rough cuts and one for each that follows, in words. */
    List<String> steps() {
        List<String> steps = new ArrayList<>();
        List<TrialCut> rough = work.trials().stream()
                .filter(cut -> cut.kind() == TrialCuts.Kind.ROUGH)
                .toList();
        if (!rough.isEmpty()) {
            steps.add("Rough in " + rough.size() + (rough.size() == 1 ? " cut" : " cuts") + " to "
                    + fine(rough.get(rough.size() - 1).to()) + " across: "
                    + rough.stream().map(this::setting).collect(Collectors.joining(", ")) + ".");
        }
        work.trials().stream()
                .filter(cut -> cut.kind() != TrialCuts.Kind.ROUGH)
                .map(this::step)
                .forEach(steps::add);
        return steps;
    }

    private String step(TrialCut cut) {
        return switch (cut.kind()) {
            case ROUGH -> "";
            case HALF ->
                "Measure the bore. Head out by half of what is left, about " + grows(cut) + ": " + setting(cut) + ".";
            case LAST -> "Measure again. Head out by what is left, about " + grows(cut) + ": " + setting(cut) + ".";
            case SPRING -> "Spring pass: the same setting once more, then measure.";
        };
    }

    private static String before(TrialCut cut) {
        return cut.measuredBefore() ? "measure, " : "";
    }

    private String cut(TrialCut cut) {
        return cut.kind() == TrialCuts.Kind.SPRING ? "spring pass" : setting(cut) + " to " + fine(cut.to());
    }

    /** What the dial reads for a cut; the way of the bar where nothing is known of the dial. */
    private String setting(TrialCut cut) {
        double grown = cut.to() - work.trials().get(0).from();
        HeadDial dial = dial();
        return dial == null ? fine(grown / 2) + " out" : "dial " + read(dial, dial.reading(grown));
    }

    private String grows(TrialCut cut) {
        return fine(cut.to() - cut.from()) + " on the diameter";
    }

    String counting() {
        HeadDial dial = dial();
        return dial == null
                ? "the bar's way out of the middle, from where it just touches"
                : "the dial counts the "
                        + switch (dial.reads()) {
                            case DIAMETER -> "diameter";
                            case RADIUS -> "radius";
                        }
                        + ", " + dial.division().text() + " a division, nought where the bar just touches";
    }

    /** In the system in which the dial is engraved, to a tenth of a division. */
    private static String read(HeadDial dial, double mm) {
        UnitSystem engraved = dial.division().text().endsWith("in") ? UnitSystem.INCH : UnitSystem.METRIC;
        return new Printing(engraved).of(Measure.LENGTH, mm, engraved == UnitSystem.INCH ? 4 : 3);
    }

    private @Nullable HeadDial dial() {
        return shown.plan()
                .rows()
                .holder(operation.holder().value())
                .flatMap(holder -> Optional.ofNullable(holder.head()))
                .orElse(null);
    }

    private String fine(double mm) {
        return shown.printing().of(Measure.LENGTH, mm, shown.printing().units() == UnitSystem.METRIC ? 2 : 4);
    }
}
