package setwright.command;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Limit;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.shape.WrittenNames;
import setwright.geometry.Nearest;
import setwright.holding.HoldFactor;
import setwright.job.DrawnOperation;
import setwright.plan.Plan;
import setwright.plan.Rows;
import setwright.plan.cut.MilledExtremes;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SecondOpinion;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.plan.time.TimePlan;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** One operation of the check's answer: mm, rev/min, mm/min, kW, N·m, N, minutes. */
final class OperationJson {
    private static final double BEYOND = 99;

    /** A spread of more than this is shown as a band, and its pessimistic end counts. */
    private static final double SPREAD = 0.2;

    private final DrawnOperation operation;
    private final Optional<OperationCut> cut;
    private final Optional<OperationRoom> room;
    private final Optional<OperationHold> hold;
    private final Optional<TimePlan.OperationTime> time;

    OperationJson(Plan plan, DrawnOperation operation) {
        this.operation = operation;
        cut = plan.cut().operation(operation.id());
        room = plan.room().operation(operation.id());
        hold = plan.hold().operation(operation.id());
        time = plan.time().operation(operation.id());
    }

    Tree tree() {
        Json.ObjectBuilder object = Json.object()
                .put("id", operation.id())
                .put("kind", WrittenNames.constant(operation.kind()))
                .put("cutter", row(operation.cutter().value()))
                .put("holder", row(operation.holder().value()))
                .put("stickOut", finite(operation.stickOut().value().inside()))
                .put("speed", in(Unit.RPM, operation.speed().value().inside()))
                .put("feed", in(Unit.MM_PER_MIN, operation.feed().value().inside()));
        putCut(object);
        putRoom(object);
        return object.put("time", time.map(one -> in(Unit.MINUTE, one.whole())).orElse(null))
                .put("governing", governing())
                .put(
                        "holdFactor",
                        holdFactor(hold.map(OperationHold::factor).stream().toList()))
                .put("kneeHeight", room.map(one -> finite(one.kneeHeight())).orElse(null))
                .put("bands", bands())
                .put("limits", limits())
                .build();
    }

    private void putCut(Json.ObjectBuilder object) {
        object.put("depth", cut.map(one -> finite(one.depth())).orElse(null))
                .put("width", cut.map(one -> finite(one.width())).orElse(null))
                .put("passes", count(cut.map(OperationCut::passes)))
                .put("power", value(Unit.KW, cut.map(OperationCut::power)))
                .put("torque", value(Unit.N_M, cut.map(OperationCut::torque)))
                .put("peakForce", value(Unit.N, cut.map(OperationCut::peakForce)))
                .put("thrust", value(Unit.N, cut.map(OperationCut::thrust)))
                .put("deflection", deflection());
    }

    private void putRoom(Json.ObjectBuilder object) {
        Optional<Nearest> nearest = room.map(OperationRoom::nearest);
        object.put("clearance", nearest.map(one -> finite(one.clearance())).orElse(null))
                .put("clearanceAt", nearest.map(one -> one.body().name()).orElse(null))
                .put("noseHeight", room.map(one -> finite(one.noseLowest())).orElse(null))
                .put("quillUsed", value(Unit.MM, room.map(OperationRoom::quillUsed)));
    }

    private @Nullable Double deflection() {
        return spread().map(band -> finite(band.high()))
                .orElseGet(() -> value(Unit.MM, cut.map(OperationCut::deflection)));
    }

    /** The band of the deflection where it is wide. */
    private Optional<Band> spread() {
        return cut.map(OperationCut::deflectionBand)
                .filter(band -> band.high() - band.low() > SPREAD * band.expected());
    }

    private Tree bands() {
        Json.ObjectBuilder bands = Json.object();
        spread().ifPresent(band ->
                bands.put("deflection", Json.array(List.of(Json.number(band.low()), Json.number(band.high())))));
        cut.map(OperationCut::opinions).orElse(List.of()).stream()
                .filter(SecondOpinion::apart)
                .filter(opinion -> opinion.ours().name().equals("torque"))
                .forEach(opinion -> bands.put("torque", ends(Unit.N_M, opinion.band())));
        cut.flatMap(one -> Optional.ofNullable(one.extremes()))
                .map(MilledExtremes::power)
                .filter(band -> band.high() - band.low() > SPREAD * band.expected())
                .ifPresent(band -> bands.put("power", ends(Unit.KW, band)));
        cut.map(OperationCut::looseLimits).orElse(List.of()).forEach(loose -> {
            Band used = loose.used();
            if (used != null) {
                bands.put(loose.name().words(), Json.array(List.of(Json.number(used.low()), Json.number(used.high()))));
            }
        });
        return bands.build();
    }

    private static Tree ends(Unit unit, Band band) {
        return Json.array(List.of(Json.number(unit.fromInside(band.low())), Json.number(unit.fromInside(band.high()))));
    }

    private @Nullable String governing() {
        return cut.map(OperationCut::governing)
                .map(limit -> limit.name().words())
                .orElse(null);
    }

    private Tree limits() {
        return Json.array(cut.map(OperationCut::limits).orElse(List.of()).stream()
                .map(OperationJson::limit)
                .toList());
    }

    private static Tree limit(Limit limit) {
        return Json.object()
                .put("name", limit.name().words())
                .put("used", Double.isFinite(limit.used()) ? limit.used() : BEYOND)
                .build();
    }

    private static @Nullable String row(String id) {
        return id.equals(Rows.NOTHING) || id.isEmpty() ? null : id;
    }

    /** The least of either outlook; null where there is none. */
    static Tree holdFactor(List<HoldFactor> factors) {
        if (factors.isEmpty()) {
            return Json.nothing();
        }
        double expected =
                factors.stream().mapToDouble(HoldFactor::expected).min().orElse(BEYOND);
        double pessimistic =
                factors.stream().mapToDouble(HoldFactor::pessimistic).min().orElse(BEYOND);
        return Json.object()
                .put("expected", Math.min(BEYOND, expected))
                .put("pessimistic", Math.min(BEYOND, pessimistic))
                .build();
    }

    static Tree count(Optional<Integer> count) {
        return count.map(number -> Json.number((long) number)).orElse(Json.nothing());
    }

    private static @Nullable Double value(Unit unit, Optional<Value> value) {
        return value.map(one -> in(unit, one.inside())).orElse(null);
    }

    private static @Nullable Double in(Unit unit, double inside) {
        return finite(unit.fromInside(inside));
    }

    static @Nullable Double finite(double number) {
        return Double.isFinite(number) ? number : null;
    }
}
