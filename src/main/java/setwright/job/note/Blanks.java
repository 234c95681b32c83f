package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import setwright.job.Blank;
import setwright.job.Block;
import setwright.job.Plate;
import setwright.job.ProfileBar;
import setwright.job.RoundBar;
import setwright.job.Size;
import setwright.job.Tube;
import setwright.job.note.Measured.Role;
import setwright.job.note.NoteRead.One;
import setwright.job.note.Piece.Kind;
import setwright.quantity.Reading;
import setwright.quantity.UnitSystem;

/** Reads the blank of a title block: {@code 100x60x25}, {@code round 40 x 200}, {@code 1 1/2 x 3 x 6 6061}. */
public final class Blanks {
    private static final int LONGEST = 200;

    private final String note;
    private final Cursor cursor;
    private final Numbers numbers;

    private Blanks(String note, List<Piece> pieces, UnitSystem units) {
        this.note = note;
        this.cursor = new Cursor(pieces);
        this.numbers = new Numbers(new Reading(units), true);
    }

    /** The forms of stock and how many sizes each takes. */
    private enum Form {
        BLOCK("length x depth x height, as 100x60x25", 3, "block", "block"),
        ROUND("diameter x length, as round 40 x 200", 2, "round bar", "round bar", "round", "dia", "diameter"),
        PLATE("length x depth x thickness, as plate 300x100x3", 3, "plate", "plate", "sheet", "flat"),
        TUBE("outside x bore x length, as tube 40 x 30 x 100", 3, "tube", "tube", "pipe"),
        HEXAGON("size across the flats x length, as hex 24 x 60", 2, "hexagon bar", "hexagon bar", "hexagon", "hex"),
        ANGLE("width x height x wall x length, as angle 50x50x5x200", 4, "angle bar", "angle bar", "angle"),
        CHANNEL("width x height x wall x length, as channel 80x40x5x200", 4, "channel bar", "channel bar", "channel"),
        BOX("width x height x wall x length, as box 40x40x3x200", 4, "box bar", "box bar", "box section", "box");

        private final String form;
        private final int sizes;
        private final String called;
        private final String[] phrases;

        Form(String form, int sizes, String called, String... phrases) {
            this.form = form;
            this.sizes = sizes;
            this.called = called;
            this.phrases = phrases;
        }
    }

    /** One reading, several, or a refusal; a blank is asked nothing. */
    public static NoteRead<BlankNote> read(String note, UnitSystem units) {
        try {
            if (note.length() > LONGEST) {
                throw Halt.refused("A blank of more than " + LONGEST + " letters is not read.", 0, note.length());
            }
            List<Piece> pieces = Pieces.of(note);
            Fractions.offerInches(note, pieces, units);
            return new Blanks(note, Units.shared(pieces), units).read();
        } catch (Halt halt) {
            return halt.read();
        }
    }

    private NoteRead<BlankNote> read() {
        Form named = form();
        if (!Numbers.follow(cursor)) {
            throw Halt.refused(
                    (cursor.look() == null ? "Nothing" : Saying.at(cursor.take()))
                            + " stands where the sizes of the blank are wanted; accepted is "
                            + (named == null ? Form.BLOCK.form + ", or " + Form.ROUND.form : named.form) + ".",
                    0,
                    note.length());
        }
        boolean round = cursor.followsSign(0, "⌀");
        List<Measured> sizes = sizes();
        String material = material();
        Form form = named == null ? (round ? Form.ROUND : Form.BLOCK) : named;
        if (sizes.size() != form.sizes) {
            throw Halt.refused(
                    "A " + form.called + " has " + form.sizes + " sizes, and " + sizes.size()
                            + " are written; accepted is " + form.form
                            + (form == Form.BLOCK && sizes.size() == 2 ? ", or " + Form.ROUND.form : "") + ".",
                    0,
                    note.length());
        }
        Blank blank = blank(form, sizes.stream().map(Measured::length).toList());
        return new One<>(new BlankNote(blank, material), sentence(form, sizes, material));
    }

    private @Nullable Form form() {
        for (Form form : Form.values()) {
            if (cursor.passes(form.phrases)) {
                return form;
            }
        }
        return null;
    }

    private List<Measured> sizes() {
        List<Measured> sizes = new ArrayList<>();
        do {
            if (!Numbers.follow(cursor)) {
                Piece last = cursor.last();
                throw Halt.refused(Saying.at(last) + " wants a size behind it, as 100x60x25.", last);
            }
            Measured size = numbers.next(cursor);
            if (size.role() == Role.DEPTH) {
                throw Halt.refused(Saying.at(size.number()) + " is a depth, which a blank has not.", size.number());
            }
            sizes.add(size);
        } while (cursor.passesSign("x"));
        return sizes;
    }

    private String material() {
        Piece comma = cursor.look();
        if (comma != null && comma.sign(",") && comma.touches(cursor.last()) && cursor.follows(1, Kind.NUMBER)) {
            throw Halt.refused(
                    Saying.at(comma)
                            + " stands in a number; the decimal sign is a point, so write 12.5 for twelve and a half.",
                    comma);
        }
        cursor.passesSign(",");
        Piece first = cursor.look();
        return first == null ? "" : note.substring(first.from()).strip();
    }

    private static Blank blank(Form form, List<Size> sizes) {
        return switch (form) {
            case BLOCK -> new Block(sizes.get(0), sizes.get(1), sizes.get(2), Map.of());
            case PLATE -> new Plate(sizes.get(0), sizes.get(1), sizes.get(2), Map.of());
            case ROUND -> new RoundBar(sizes.get(0), sizes.get(1), Map.of());
            case TUBE -> tube(sizes);
            case HEXAGON ->
                new ProfileBar(ProfileBar.Section.HEXAGON, sizes.get(0), sizes.get(0), null, sizes.get(1), Map.of());
            case ANGLE -> walled(ProfileBar.Section.ANGLE, sizes);
            case CHANNEL -> walled(ProfileBar.Section.CHANNEL, sizes);
            case BOX -> walled(ProfileBar.Section.BOX, sizes);
        };
    }

    private static Blank tube(List<Size> sizes) {
        if (sizes.get(1).nominal().inside() >= sizes.get(0).nominal().inside()) {
            throw Halt.refused(
                    "The bore of " + sizes.get(1).nominal().text() + " is no less than the outside; accepted is "
                            + Form.TUBE.form + ".",
                    0,
                    0);
        }
        return new Tube(sizes.get(0), sizes.get(1), sizes.get(2), Map.of());
    }

    private static Blank walled(ProfileBar.Section section, List<Size> sizes) {
        return new ProfileBar(section, sizes.get(0), sizes.get(1), sizes.get(2), sizes.get(3), Map.of());
    }

    private String sentence(Form form, List<Measured> sizes, String material) {
        Spoken spoken = new Spoken(numbers.reading().bare());
        String by = String.join(
                " x ", sizes.stream().map(size -> spoken.size(size.length())).toList());
        return Spoken.capital(form.called) + " " + by + (material.isEmpty() ? "" : ", " + material);
    }
}
