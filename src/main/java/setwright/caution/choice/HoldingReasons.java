package setwright.caution.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Checks;
import setwright.caution.Severity;
import setwright.holding.HoldFactor;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.location.budget.Reloading;
import setwright.plan.NotChecked;
import setwright.plan.hold.OperationHold;
import setwright.plan.place.Loading;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.shop.ShopRow;

/** Why an arrangement is kept or dropped: what stops it, how it holds, what it does to the part, what it costs. */
record HoldingReasons(Tried tried, String setUp) {
    private static final double BEYOND = 99;

    /** Close to the body by one person, kg (common practice). */
    private static final double ONE_PERSON = 20;

    private static final List<String> SPRING = List.of("springs-when-released", "work-springs", "thin-wall");
    private static final List<String> TOLERANCE = List.of("off-tolerance", "slot-comes-wide", "related-features-split");

    List<String> all() {
        if (!tried.candidate().against().isEmpty()) {
            return tried.candidate().against();
        }
        List<String> all = new ArrayList<>(tried.stopped());
        all.addAll(Said.all(of(Severity.CAUTION)));
        all.addAll(tried.candidate().doubts());
        if (tried.heard().stream().noneMatch(caution -> caution.slug().endsWith("-in-grip"))) {
            hold().map(this::grip).ifPresent(all::add);
        }
        if (tried.kept()) {
            all.addAll(figures());
            all.addAll(unlooked());
            all.addAll(Said.all(of(Severity.NOTE)));
            heavy().ifPresent(all::add);
            again().ifPresent(all::add);
            all.add(standing());
            all.add(time());
        }
        return all.stream().distinct().toList();
    }

    /** Of the operation that is held least; empty where none is balanced. */
    Optional<HoldFactor> factor() {
        return hold().map(OperationHold::factor);
    }

    /** Whether something that stands on the table has to come off first. */
    boolean clearsTheTable() {
        return tried.candidate().against().isEmpty()
                && !standsThere()
                && !clockedIn().isEmpty();
    }

    private List<Caution> of(Severity severity) {
        return tried.heard().stream()
                .filter(caution -> caution.severity() == severity)
                .toList();
    }

    private Optional<OperationHold> hold() {
        return tried.plan().hold().weakest(setUp);
    }

    private String grip(OperationHold hold) {
        Printing printing = printing();
        HoldFactor factor = hold.factor();
        if (factor.pessimistic() >= BEYOND) {
            return "It holds 99 times the cut and more";
        }
        return "The grip bears " + printing.factor(factor.expected()) + " times the cut, "
                + printing.factor(factor.pessimistic()) + " on a bad day, least at " + hold.operation();
    }

    private List<String> figures() {
        Figures figures = new Figures(tried, printing(), place -> place.setUp().equals(setUp));
        List<String> all = new ArrayList<>();
        figures.tightest(SPRING).ifPresent(all::add);
        figures.tightest(TOLERANCE).ifPresent(all::add);
        figures.tightest(Checks.ofRoom()).ifPresent(all::add);
        return all;
    }

    /** What of the grip nobody could work out. */
    private List<String> unlooked() {
        return tried.plan().hold().notChecked().stream()
                .filter(what -> what.setUp().equals(setUp))
                .map(NotChecked::needs)
                .distinct()
                .map(needs -> "Not checked: " + needs)
                .toList();
    }

    /** Of a batch: how one part after the other comes to the same place. */
    private Optional<String> again() {
        if (tried.plan().job().plan().numberOff() == 1) {
            return Optional.empty();
        }
        return tried.plan().drawnUp().setUp(setUp).map(drawn -> {
            Reloading reloading = new Loading(drawn, tried.plan().rows()).reloading();
            String within = printing().of(Measure.LENGTH, reloading.halfWidth(), 3);
            return "Each further part, " + reloading.words() + ", lies within " + within + " of the first";
        });
    }

    private Optional<String> heavy() {
        double mass = tried.plan()
                .part()
                .setUp(setUp)
                .map(stage -> stage.start().bound()
                        * tried.plan().rows().material().density().inside())
                .orElse(0.0);
        return mass > ONE_PERSON
                ? Optional.of(
                        "The part weighs " + printing().of(Measure.MASS, mass) + ": a hoist, or a second pair of hands")
                : Optional.empty();
    }

    private String standing() {
        if (device().isEmpty()) {
            return clockedIn().isEmpty()
                    ? "Nothing has to be bolted down first"
                    : "W" + comesOff().substring(1);
        }
        if (standsThere()) {
            return "It stands on the table already";
        }
        return "It has to be bolted down and clocked" + (clockedIn().isEmpty() ? "" : "; " + comesOff());
    }

    private String comesOff() {
        return "what stands on the table comes off first: " + String.join(", ", clockedIn());
    }

    private boolean standsThere() {
        return tried.plan().job().plan().machine().clockedIn().contains(device());
    }

    private List<String> clockedIn() {
        return tried.plan().job().plan().machine().clockedIn().stream()
                .map(id -> tried.plan().rows().shop().row(id).map(ShopRow::name).orElse(id))
                .toList();
    }

    /** The row that stands on the table; empty where the part lies on it. */
    private String device() {
        return tried.plan()
                .drawnUp()
                .setUp(setUp)
                .map(DrawnSetUp::holding)
                .map(HoldingReasons::device)
                .orElse("");
    }

    private static String device(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> ((DrawnVise) holding).vise().value();
            case DEVICE -> ((DrawnDevice) holding).device().value();
            case TABLE -> "";
        };
    }

    private String time() {
        int parts = tried.plan().job().plan().numberOff();
        String all = printing().of(Measure.TIME, tried.plan().time().batch());
        return (parts == 1 ? "One part takes " : parts + " parts take ") + all + " in all";
    }

    private Printing printing() {
        return new Printing(tried.plan().job().plan().units());
    }
}
