package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.count;
import static setwright.figures.Input.measure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import setwright.location.FlatsOnRound;
import setwright.location.gear.ParallelSplines;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** Flats and splines round a bar. */
final class FlatFigures {
    private static final Table SPLINES =
            new Table("splines", "shares of the large diameter", Unit.MM, ParallelSplines.SOURCE);

    private FlatFigures() {}

    static List<Figure> all() {
        return List.of(acrossFlats(), flatsOnRound(), splines());
    }

    private static Figure acrossFlats() {
        return new Figure(
                "across-flats",
                "{flats} flats, {across} across, want",
                List.of(count("flats").from(3), measure("across", Measure.LENGTH)),
                List.of("round-needed mm", "depth-per-flat mm"),
                asked -> {
                    Worked round = FlatsOnRound.ROUND.of(asked.value("across"), asked.value("flats"));
                    Worked depth = FlatsOnRound.DEPTH.of(round, asked.value("across"));
                    Answered answered = Answered.of(
                            Answer.of("round-needed", round, Unit.MM), Answer.of("depth-per-flat", depth, Unit.MM));
                    return asked.count("flats") % 2 == 0
                            ? answered
                            : answered.noting("an odd number has no flat opposite a flat: across is twice the distance"
                                    + " from the axis to a flat");
                });
    }

    private static Figure flatsOnRound() {
        return new Figure(
                "flats-on-round",
                "{flats} flats on a round of {round} are cut",
                List.of(
                        count("flats"),
                        measure("round", Measure.LENGTH),
                        measure("across", Measure.LENGTH).maybe("corners are sharp")),
                List.of("across mm", "depth-per-flat mm", "flat-width mm", "measured-over mm", "angle °"),
                FlatFigures::flats);
    }

    private static Answered flats(Asked asked) {
        int flats = asked.count("flats");
        Value round = asked.value("round");
        if (!asked.has("across") && flats < 3) {
            throw Refusal.of("across", "it is missing; one or two flats have no sharp corners to go by.");
        }
        double sharp = flats < 3 ? 0 : FlatsOnRound.sharp(round.inside(), flats);
        Given across = asked.valueOr("across", Given.of("across the flats", sharp, Unit.MM, "corners sharp"));
        if (across.inside() >= round.inside()) {
            throw Refusal.of("across", "it is no smaller than the round; accepted: below it.");
        }
        if (across.inside() < sharp * (1 - 1e-9)) {
            throw Refusal.of(
                    "across",
                    "neighbouring flats meet before it, and take the round away; accepted: from "
                            + Input.plain(Math.ceil(sharp * 1000) / 1000) + " mm.");
        }
        boolean even = flats % 2 == 0;
        Answer over = even
                ? Answer.of("measured-over", across.inside(), Unit.MM)
                : Answer.of("measured-over", FlatsOnRound.OVER_ROUND.of(round, across), Unit.MM);
        return Answered.of(
                        Answer.of("across", across.inside(), Unit.MM),
                        Answer.of("depth-per-flat", FlatsOnRound.DEPTH.of(round, across), Unit.MM),
                        Answer.of("flat-width", FlatsOnRound.WIDTH.of(round, across), Unit.MM),
                        over,
                        Answer.of("angle", 2 * Math.PI / flats, Unit.DEG))
                .noting(
                        even
                                ? "measured over opposite flats"
                                : "measured over a flat and the round or corner opposite");
    }

    private static Figure splines() {
        return new Figure(
                "splines",
                "{splines} splines with parallel sides on {diameter} are",
                List.of(
                        count("splines"),
                        measure("diameter", Measure.LENGTH),
                        choice("fit", "permanent", "slide", "slide-loaded").or("slide")),
                List.of("width mm", "depth mm", "small-diameter mm", "angle °"),
                FlatFigures::splined);
    }

    private static Answered splined(Asked asked) {
        ParallelSplines.Fit fit = ParallelSplines.Fit.valueOf(
                asked.words("fit").toUpperCase(Locale.ROOT).replace('-', '_'));
        ParallelSplines row = ParallelSplines.of(asked.count("splines"), fit)
                .orElseThrow(() -> Refusal.of(
                        "splines",
                        "that many are not listed with this fit; accepted: "
                                + ParallelSplines.listed().stream()
                                        .filter(one -> one.fit() == fit)
                                        .map(one -> String.valueOf(one.count()))
                                        .collect(Collectors.joining(", "))
                                + "."));
        Value diameter = asked.value("diameter");
        return Answered.of(
                        Answer.of("width", share(row.width(), diameter), Unit.MM),
                        Answer.of("depth", share(row.depth(), diameter), Unit.MM),
                        Answer.of("small-diameter", share(row.minor(), diameter), Unit.MM),
                        Answer.of("angle", 2 * Math.PI / row.count(), Unit.DEG))
                .noting("straddle a spline with two cutters its width apart, or set a cutter over by half the width and"
                        + " half the cutter and go round twice; the drawing's sizes go before these");
    }

    private static Worked share(double share, Value diameter) {
        return SPLINES.of(Input.plain(share) + " of the large diameter", share * diameter.inside(), diameter);
    }
}
