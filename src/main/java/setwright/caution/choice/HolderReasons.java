package setwright.caution.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.MilledExtremes;
import setwright.quantity.Band;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.quantity.Value;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Why a holder is kept or dropped: what stops it, how true and how stiff it is, how long, what it costs to change. */
record HolderReasons(Tried tried, Plan before, String id) {
    private static final List<String> GRIP = List.of("slips-in-holder", "pulls-out-of-holder");
    private static final List<String> SPEED = List.of("too-fast-for-the-tool");
    private static final double NOTICED = 0.5;
    private static final double MINUTE = 60;

    List<String> all() {
        if (!tried.candidate().against().isEmpty()) {
            return tried.candidate().against();
        }
        List<String> all = new ArrayList<>(tried.stopped());
        all.addAll(Said.all(tried.heard().stream()
                .filter(caution -> caution.severity() == Severity.CAUTION)
                .toList()));
        if (tried.kept()) {
            operation(tried.plan())
                    .ifPresent(drawn -> holder(drawn).ifPresent(holder -> {
                        runOut(drawn, holder).ifPresent(all::add);
                        spring().ifPresent(all::add);
                        all.add(length(drawn, holder));
                        place(drawn, holder).ifPresent(all::add);
                    }));
            Figures figures =
                    new Figures(tried, printing(), place -> place.operation().equals(id));
            figures.tightest(GRIP).ifPresent(all::add);
            figures.tightest(SPEED).ifPresent(all::add);
            time().ifPresent(all::add);
        }
        return all.stream().distinct().toList();
    }

    private static Optional<DrawnOperation> operation(Plan plan, String id) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operation(id).stream())
                .findFirst();
    }

    private Optional<DrawnOperation> operation(Plan plan) {
        return operation(plan, id);
    }

    private Optional<Holder> holder(DrawnOperation drawn) {
        return tried.plan().rows().holder(drawn.holder().value());
    }

    /** What it runs out by at the nose, and what that costs: edge life when milling, size in a hole. */
    private Optional<String> runOut(DrawnOperation drawn, Holder holder) {
        double low = holder.runOutLow().inside();
        double high = holder.runOutHigh().inside();
        if (high <= 0) {
            return Optional.empty();
        }
        String much = "It runs out " + fine(low) + " to " + fine(high) + " at its nose";
        boolean sized = drawn.kind() == Operation.Kind.DRILL || drawn.kind() == Operation.Kind.REAM;
        if (sized && holder.style() != Holder.Style.FLOATING_REAMER_HOLDER) {
            return Optional.of(much + ": a hole comes up to " + fine(high) + " larger");
        }
        return Optional.of(tried.plan()
                .cut()
                .operation(id)
                .flatMap(cut -> Optional.ofNullable(cut.extremes()))
                .map(extremes -> much + worstChip(extremes))
                .orElse(much));
    }

    /** One tooth takes more than its share, and wears first. */
    private String worstChip(MilledExtremes extremes) {
        double even = extremes.chip().inside();
        double worst = extremes.chipRunningOut().inside();
        return ": one tooth takes " + fine(worst) + " where each would take " + fine(even) + ", and dulls first";
    }

    /** How far the tool gives, with the band from a stiff to a soft machine. */
    private Optional<String> spring() {
        return tried.plan().cut().operation(id).flatMap(cut -> {
            Value gives = cut.deflection();
            Band band = cut.deflectionBand();
            return gives == null || band == null
                    ? Optional.empty()
                    : Optional.of("The tip gives " + fine(gives.inside()) + " under the cut, " + fine(band.low())
                            + " to " + fine(band.high()));
        });
    }

    /** From spindle nose to tip, and whether a tool put back comes to the same length. */
    private String length(DrawnOperation drawn, Holder holder) {
        double out = reach(drawn, holder);
        String more = operation(before, id)
                .flatMap(was -> before.rows().holder(was.holder().value()).map(held -> out - reach(was, held)))
                .filter(by -> Math.abs(by) >= NOTICED)
                .map(by -> ", " + length(Math.abs(by)) + (by > 0 ? " longer" : " shorter") + " than now")
                .orElse("");
        return "The tip stands " + length(out) + " below the spindle nose" + more
                + (holder.keepsLength()
                        ? "; put back it comes to the same length"
                        : "; touched off anew after every change");
    }

    private static double reach(DrawnOperation drawn, Holder holder) {
        return holder.projection().inside() + drawn.stickOut().value().inside();
    }

    /** How the shank has to sit in it. */
    private Optional<String> place(DrawnOperation drawn, Holder holder) {
        return tried.plan().rows().cutter(drawn.cutter().value()).flatMap(cutter -> switch (holder.style()) {
            case SET_SCREW ->
                Optional.of("Its screw bears on the flat, so that the tool has one place and cannot walk out");
            case COLLET_CHUCK -> collet(cutter);
            case SCREWED_SHANK_CHUCK -> Optional.of("The screwed shank tightens itself and cannot walk out");
            case DRILL_CHUCK_KEYED,
                    DRILL_CHUCK_KEYLESS,
                    SPINDLE_COLLET,
                    SHRINK,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER,
                    FACE_MILL_ARBOR,
                    SHELL_MILL_ARBOR,
                    STUB_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD -> Optional.empty();
        });
    }

    private Optional<String> collet(Cutter cutter) {
        return cutter.form() == Cutter.Form.END_MILL
                ? Optional.of("Take the collet of the shank's own size, "
                        + cutter.shank().text() + ": one that is closed down on it holds less")
                : Optional.empty();
    }

    private Optional<String> time() {
        double by = tried.plan().time().batch() - before.time().batch();
        return Math.abs(by) < MINUTE
                ? Optional.empty()
                : Optional.of("The batch takes " + printing().of(Measure.TIME, Math.abs(by))
                        + (by > 0 ? " longer" : " less") + " than now");
    }

    private String length(double mm) {
        return printing().of(Measure.LENGTH, mm);
    }

    private String fine(double mm) {
        return printing().of(Measure.LENGTH, mm, printing().units() == UnitSystem.METRIC ? 3 : 4);
    }

    private Printing printing() {
        return new Printing(tried.plan().job().plan().units());
    }
}
