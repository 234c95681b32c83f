package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;
import static setwright.figures.Input.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.location.key.KeyRow;
import setwright.location.key.KeySeat;
import setwright.location.key.KeyStandard;
import setwright.location.key.Woodruff;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.quantity.fit.Fits;
import setwright.quantity.fit.Limits;

/** The keys that belong to shafts, and their seats. */
final class KeyFigures {
    private KeyFigures() {}

    static List<Figure> all() {
        return List.of(parallel(), woodruff(), centre());
    }

    private static Figure parallel() {
        return new Figure(
                "key",
                "A shaft of {shaft} has a key of",
                List.of(
                        measure("shaft", Measure.LENGTH),
                        choice("standard", "din", "asme").or("din"),
                        choice("fit", "normal", "tight", "free").maybe("limits of the width are not said")),
                List.of(
                        "width mm",
                        "depth mm",
                        "over-opposite-side mm",
                        "depth-from-top mm",
                        "height mm",
                        "with fit: width-upper, width-lower µm"),
                KeyFigures::key);
    }

    private static Answered key(Asked asked) {
        boolean din = asked.is("standard", "din");
        KeyStandard standard = din ? KeyStandard.DIN : KeyStandard.ASME;
        KeyRow row = standard.key(asked.number("shaft"))
                .orElseThrow(() -> Refusal.of(
                        "shaft",
                        "no key is listed for it; accepted: above "
                                + Input.plain(standard.rows().get(0).over()) + " up to "
                                + Input.plain(standard.rows()
                                        .get(standard.rows().size() - 1)
                                        .to()) + " mm."));
        Given shaft = asked.value("shaft");
        Worked width = new Table("width", "width of the key", Unit.MM, row.source()).of(range(row), row.width(), shaft);
        Worked depth = din
                ? new Table("depth", "t1 in the shaft", Unit.MM, row.source()).of(range(row), row.depth(), shaft)
                : KeySeat.HALF_HEIGHT.of(Given.of(
                        "height of the key", row.height(), Unit.MM, row.source().text()));
        Worked fromTop = din ? depth : KeySeat.FROM_TOP.of(depth, KeySeat.RISE_OF_ARC.of(shaft, width));
        List<Answer> answers = new ArrayList<>(List.of(
                Answer.of("width", width, Unit.MM),
                Answer.of("depth", depth, Unit.MM),
                Answer.of("over-opposite-side", KeySeat.OVER_OPPOSITE.of(shaft, fromTop), Unit.MM),
                Answer.of("depth-from-top", fromTop.inside(), Unit.MM),
                Answer.of("height", row.height(), Unit.MM)));
        String datum = din
                ? "the depth is measured from the crown of the shaft (t1)"
                : "the depth is measured at the side of the seat (half the key's height)";
        return asked.has("fit")
                ? limits(asked, din, row, answers, datum)
                : new Answered(answers, List.of(datum), List.of());
    }

    private static String range(KeyRow row) {
        return "shaft over " + Input.plain(row.over()) + " to " + Input.plain(row.to()) + " mm";
    }

    private static Answered limits(Asked asked, boolean din, KeyRow row, List<Answer> answers, String datum) {
        if (!din) {
            return new Answered(
                    answers, List.of(datum, "limits of the width are carried for the din standard only"), List.of());
        }
        String zone = switch (asked.words("fit")) {
            case "tight" -> "P9";
            case "free" -> "H9";
            default -> "N9";
        };
        Limits limits = Fits.listed().limits(row.width(), zone);
        answers.add(Answer.of("width-upper", limits.upper(), Unit.UM));
        answers.add(Answer.of("width-lower", limits.lower(), Unit.UM));
        return new Answered(answers, List.of(datum, "seat in the shaft " + zone), List.of());
    }

    private static Figure woodruff() {
        return new Figure(
                "woodruff-key",
                "A Woodruff key {key} in a shaft of {shaft} has a seat of",
                List.of(words("key"), measure("shaft", Measure.LENGTH)),
                List.of("width mm", "cutter-diameter mm", "depth mm", "depth-from-top mm", "in-hub mm"),
                KeyFigures::halfMoon);
    }

    private static Figure centre() {
        return new Figure(
                "keyseat-centre",
                "From the side of a shaft of {shaft} a cutter of {cutter} goes to the middle by",
                List.of(
                        measure("shaft", Measure.LENGTH),
                        measure("cutter", Measure.LENGTH),
                        measure("paper", Measure.LENGTH).from(0).or("0 mm")),
                List.of("move mm"),
                asked -> Answered.of(Answer.of(
                                "move",
                                KeySeat.TO_CENTRE.of(asked.value("shaft"), asked.value("cutter"), asked.value("paper")),
                                Unit.MM))
                        .noting("touch the side below the widest of the cutter, lower the work clear, then move; with a"
                                + " saw or Woodruff cutter it is its width that counts"));
    }

    private static Answered halfMoon(Asked asked) {
        Woodruff key = Woodruff.called(asked.words("key"))
                .orElseThrow(() -> Refusal.of(
                        "key",
                        "'" + asked.words("key") + "' is not listed; accepted, by number (606) or width x diameter: "
                                + Woodruff.listed().stream().map(Woodruff::name).collect(Collectors.joining(", "))
                                + "."));
        Given shaft = asked.value("shaft");
        if (shaft.inside() <= key.diameter() / 2) {
            throw Refusal.of("shaft", "it is no larger than half the key; take a smaller key.");
        }
        Table table = new Table("Woodruff key", "seat of the key", Unit.MM, key.source());
        Worked depth = table.of(key.name(), key.depth());
        Worked rise = KeySeat.RISE_OF_ARC.of(
                shaft, Given.of("width", key.width(), Unit.MM, key.source().text()));
        return Answered.of(
                        Answer.of("width", key.width(), Unit.MM),
                        Answer.of("cutter-diameter", key.diameter(), Unit.MM),
                        Answer.of("depth", depth, Unit.MM),
                        Answer.of("depth-from-top", KeySeat.FROM_TOP.of(depth, rise), Unit.MM),
                        Answer.of("in-hub", key.inHub(), Unit.MM))
                .noting(
                        "the depth is that of the wall at the side; the cutter goes in from the crown by depth-from-top");
    }
}
