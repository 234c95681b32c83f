package setwright.sheet;

import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.cut.MilledExtremes;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Value;

/** What a milled cut asks of spindle and cutter, in words. */
record MillWords(Printing printing, OperationCut cut) {
    static final String SCRATCHES = "a scriber only scratches: no cutting load worth a number";

    static List<String> lines(Shown shown, DrawnOperation operation) {
        if (operation.kind() == Operation.Kind.SCRIBE) {
            return List.of(SCRATCHES);
        }
        return shown.plan().cut().operation(operation.id()).stream()
                .map(cut -> new MillWords(shown.printing(), cut))
                .flatMap(words -> words.line().stream())
                .toList();
    }

    private Optional<String> line() {
        MilledExtremes beyond = cut.extremes();
        Value peak = cut.peakForce();
        return beyond == null || peak == null
                ? Optional.empty()
                : Optional.of("takes " + power() + "; pushed aside by up to "
                        + printing.of(Measure.FORCE, peak.inside()) + ", "
                        + printing.of(Measure.FORCE, beyond.forceRunningOut().inside())
                        + " if the holder runs out by "
                        + printing.of(Measure.LENGTH, beyond.runOut().inside()));
    }

    private String power() {
        return cut.powerBand()
                .map(band -> printing.of(Measure.POWER, band.low()) + " to " + printing.of(Measure.POWER, band.high())
                        + " by source and wear")
                .orElseGet(() -> printing.of(Measure.POWER, cut.power().inside()));
    }
}
