package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Nearest;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft;
import setwright.plan.hold.OperationHold;
import setwright.plan.place.Aspect;
import setwright.plan.place.FeatureBudget;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Band;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.quantity.Working;
import setwright.window.state.Selection;

/** The worked figures of a line, each opening into how it was worked out. */
final class Figures {
    private static final double BEYOND = 99;

    private final Planned planned;
    private final List<String> open;
    private final List<Figure> figures = new ArrayList<>();

    Figures(Planned planned, List<String> open) {
        this.planned = planned;
        this.open = open;
    }

    List<Figure> of(Selection at) {
        switch (at.line()) {
            case Selection.PART -> part();
            case Selection.HOLDING -> holding(at.setUp());
            default -> operation(at.line());
        }
        return List.copyOf(figures);
    }

    private void part() {
        add(
                "each",
                "A part",
                Times.text(planned.plan().time().each(), printing()),
                "loading, cutting, changing tools, measuring");
        add("setUp", "Setting up", Times.text(planned.plan().time().setUp(), printing()), "once");
        add("batch", "All parts", Times.text(planned.plan().time().batch(), printing()), "");
    }

    private void holding(String setUp) {
        planned.plan().hold().weakest(setUp).ifPresent(weakest -> {
            hold("Held least", weakest, "against " + planned.brief(weakest.operation()));
        });
        planned.plan().room().setUp(setUp).ifPresent(room -> {
            String heights = String.join(
                    ", ", room.kneeHeights().stream().map(this::length).toList());
            add("knee", "Nose over table", heights, "quill in");
            add("touchOffs", "Z touched off", Words.count(room.touchOffs(), "time"), "");
        });
    }

    private void operation(String id) {
        planned.plan().cut().operation(id).ifPresent(this::cut);
        planned.plan().hold().operation(id).ifPresent(hold -> hold("Held", hold, gives(hold)));
        planned.plan().room().operation(id).ifPresent(this::room);
        planned.plan().place().budgets().stream()
                .filter(budget -> budget.operation().equals(id))
                .forEach(this::budget);
    }

    private void cut(OperationCut cut) {
        worked("feedPerEdge", "", cut.feedPerEdge(), cut.passes() > 1 ? cut.passes() + " passes" : "");
        worked("secondsPerTurn", "", cut.secondsPerTurn(), "");
        worked("power", "", cut.power(), "");
        worked("torque", "", cut.torque(), "");
        worked("peakForce", "", cut.peakForce(), "");
        worked("thrust", "", cut.thrust(), "");
        worked("deflection", "", cut.deflection(), band(cut.deflectionBand()));
        for (SurfaceLeft left : cut.surfaces()) {
            worked(left.surface().name(), "Left on the " + left.surface().words(), left.normal(), band(left.band()));
        }
        cut.work().forEach(gives -> worked(gives.where().name(), "", gives.worked(), band(gives.band())));
    }

    private void hold(String name, OperationHold hold, String said) {
        String more = said.isEmpty() ? "" : "; " + said;
        String badDay = "times the cut; on a bad day " + factor(hold.factor().pessimistic());
        figures.add(figure("hold", name, hold.worked(), badDay + more)
                .printedAs(factor(hold.factor().expected())));
    }

    private static String gives(OperationHold hold) {
        return hold.motion().isEmpty() ? "" : hold.motion() + " first";
    }

    /** Beyond what is asked for the figure says no more. */
    private String factor(double factor) {
        return factor >= BEYOND ? "99 or more" : printing().factor(factor);
    }

    private void room(OperationRoom room) {
        Nearest nearest = room.nearest();
        if (nearest != null) {
            add(
                    "clearance",
                    "Nearest",
                    length(nearest.clearance()),
                    nearest.section().name() + " to " + nearest.body().name());
        }
        worked("quill", "", room.quillUsed(), "of " + length(room.quillStroke()));
    }

    private void budget(FeatureBudget budget) {
        worked(
                "place." + budget.subject(),
                budget.aspect() == Aspect.PLACE ? "Off its place" : Words.capital(budget.what()) + ", off",
                budget.rss(),
                "of " + length(budget.limit()) + "; most by " + budget.largest()
                        + (budget.halvedBy().isEmpty() ? "" : ", halved by " + budget.halvedBy())
                        + (budget.opinion().isEmpty() ? "" : "; " + budget.opinion()));
    }

    private String band(@Nullable Band band) {
        return band == null ? "" : printing().band(Measure.SMALL_LENGTH, band);
    }

    private void worked(String key, String name, @Nullable Value value, String said) {
        if (value != null) {
            figures.add(figure(key, name, value, said));
        }
    }

    private Figure figure(String key, String name, Value value, String said) {
        List<Working.Line> working = open.contains(key) && value instanceof Worked worked
                ? Working.of(worked, printing()).lines()
                : List.of();
        String title = name.isEmpty() ? Words.capital(value.name()) : name;
        return new Figure(key, title, printing().of(value), said, value instanceof Worked, working);
    }

    private void add(String key, String name, String printed, String said) {
        figures.add(new Figure(key, name, printed, said, false, List.of()));
    }

    private String length(double mm) {
        return printing().of(Measure.LENGTH, mm);
    }

    private Printing printing() {
        return planned.printing();
    }
}
