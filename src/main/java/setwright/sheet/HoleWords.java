package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.cutting.EasedFeed;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.cut.HoleWork;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SecondOpinion;
import setwright.quantity.Band;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.shop.Tap;

/** What a hand has to know of a cut in a hole. */
record HoleWords(Shown shown, DrawnOperation operation, OperationCut cut, HoleWork work) {
    static Optional<HoleWords> of(Shown shown, DrawnOperation operation) {
        return shown.plan()
                .cut()
                .operation(operation.id())
                .flatMap(
                        cut -> Optional.ofNullable(cut.hole()).map(work -> new HoleWords(shown, operation, cut, work)));
    }

    /** As the sheet lists it. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(load());
        behind().ifPresent(lines::add);
        cut.opinions().stream().filter(SecondOpinion::apart).map(this::opinion).forEach(lines::add);
        pecks().ifPresent(lines::add);
        entering().ifPresent(lines::add);
        breakingThrough().ifPresent(lines::add);
        tapping().ifPresent(lines::add);
        if (!work.trials().isEmpty()) {
            lines.add(new BoringWords(shown, operation, work).line());
        }
        return lines;
    }

    /** As the hand needs it at a hole. */
    String act() {
        return List.of(behind(), pecks(), entering(), breakingThrough(), tapping()).stream()
                .flatMap(Optional::stream)
                .map(line -> "; " + line)
                .collect(Collectors.joining());
    }

    private String load() {
        String turns = "turns with " + torque(cut.torque().inside()) + ", " + band(work.torque());
        Band thrust = work.thrust();
        return thrust == null
                ? turns
                : "push " + force(thrust.expected()) + ", worn " + force(thrust.high()) + "; " + turns;
    }

    private String band(Band band) {
        return torque(band.low()) + " to " + torque(band.high()) + " by source and wear";
    }

    private String opinion(SecondOpinion opinion) {
        return opinion.other().name() + " by kc " + torque(opinion.other().inside()) + ", "
                + Math.round(100 * Math.abs(opinion.difference())) + " % "
                + (opinion.difference() < 0 ? "less" : "more") + " than the handbook's "
                + torque(opinion.ours().inside());
    }

    private Optional<String> behind() {
        return work.fromBehind()
                ? Optional.of(
                        "bar down through the hole at standstill, cutter pinned on from below; then up by the lever,"
                                + " which lifts the part; cutter off again before the bar comes out")
                : Optional.empty();
    }

    private Optional<String> pecks() {
        return work.clearings() == 0
                ? Optional.empty()
                : Optional.of("out for the chips at "
                        + work.pecks().subList(0, work.clearings()).stream()
                                .map(shown::length)
                                .collect(Collectors.joining(", ")));
    }

    private Optional<String> entering() {
        return Optional.ofNullable(work.entering())
                .map(eased -> "the face is " + work.entry().words() + ": " + perTurn(eased) + " until "
                        + shown.length(eased.to()) + " deep");
    }

    private Optional<String> breakingThrough() {
        String how = operation.method().value() == Operation.Method.QUILL_POWER
                ? "knock the power feed off at "
                : "ease the lever at ";
        return Optional.ofNullable(work.breakingThrough())
                .map(eased -> how + shown.length(eased.from()) + " and break through at " + perTurn(eased));
    }

    private String perTurn(EasedFeed eased) {
        return shown.printing().of(Measure.FEED_PER_REV, eased.feedPerTurn());
    }

    private Optional<String> tapping() {
        return operation.kind() != Operation.Kind.TAP
                ? Optional.empty()
                : Optional.of(
                        switch (operation.method().value()) {
                            case TAP_UNDER_POWER -> "stop the spindle short of the bottom, then reverse it out";
                            case TAP_WITH_HEAD ->
                                "clutch of the head set a little over "
                                        + torque(work.torque().high());
                            case TAP_ON_BENCH ->
                                "started square here, finished with the wrench on the bench; " + turning();
                            default -> "centre in the tap's end, quill following; " + turning();
                        });
    }

    private String turning() {
        return shown.plan()
                .rows()
                .row(operation.cutter().value(), Tap.class)
                .map(Tap::flute)
                .map(flute -> switch (flute) {
                    case STRAIGHT -> "a quarter turn back after each turn to break the chip";
                    case SPIRAL_POINT -> "straight on, the chips run ahead";
                    case SPIRAL_FLUTE -> "straight on, the chips come up the flutes";
                    case FORM -> "straight on with plenty of oil, there are no chips";
                })
                .orElse("a quarter turn back after each turn");
    }

    private String torque(double inside) {
        return shown.printing().of(Measure.TORQUE, inside);
    }

    private String force(double newton) {
        return shown.printing().of(Measure.FORCE, Unit.N.toInside(newton));
    }
}
