package setwright.job.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Pocket;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.note.NoteRead.Kind;
import setwright.job.note.NoteRead.Missing;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Refused;
import setwright.job.note.NoteRead.Several;
import setwright.quantity.UnitSystem;

/** Whatever is typed is read, asked for, offered or refused; nothing is thrown, and no size comes out absurd. */
class AnyTextTest {
    private static final List<String> PIECES = List.of(
            "4x",
            "6 x",
            "M6",
            "M8 x 1",
            "1/4-20",
            "#7",
            "F",
            "10",
            "12.5",
            "1 1/2",
            "½",
            "12,5",
            "0",
            "-5",
            "H7",
            "h7",
            "thru",
            "x",
            "x 8 deep",
            "slot",
            "pocket",
            "cbore",
            "csk",
            "on",
            "on front",
            "from the right",
            "at",
            "at 12,12",
            "centred",
            "76x36",
            "pitch 25",
            "2 rows",
            "in line",
            "R6",
            "Ra 1.6",
            "keyseat",
            "step",
            "left",
            "chamfer",
            "45",
            "60 deg",
            "face to",
            "top to",
            "square",
            "T-slot",
            "dovetail",
            "flats",
            "slit",
            "graduations",
            "on 80 BC",
            "±0.05",
            "+.001 -.000",
            "+",
            "/",
            "(",
            "\"",
            "mm",
            "in",
            "⌀",
            "↧",
            ";",
            "99999999999999999999",
            "1/0",
            "0/1",
            "open",
            "turned",
            "spotface 20 on 10",
            "bore",
            "hole1",
            "\u202f",
            "\ud83d\ude00",
            "ﬀ",
            "\u0000",
            "\n",
            "long",
            "deep",
            "BC",
            "#0-80",
            "M",
            "M0",
            "#",
            "no",
            "1e9",
            ".",
            ".5",
            "5.",
            "..",
            "--",
            "1-1/2-6",
            "99/1",
            "M999x999");

    @Test
    void notes_of_random_pieces_are_never_thrown_at_anybody() {
        Rounds.each(20_260_301L, Rounds.count(400), (random, round) -> {
            StringBuilder note = new StringBuilder();
            int pieces = 1 + random.nextInt(7);
            for (int i = 0; i < pieces; i++) {
                note.append(PIECES.get(random.nextInt(PIECES.size()))).append(random.nextInt(4) == 0 ? "" : " ");
            }
            check(note.toString(), random);
        });
    }

    @Test
    void garbage_is_never_thrown_at_anybody() {
        Rounds.each(20_260_302L, Rounds.count(150), (random, round) -> {
            StringBuilder note = new StringBuilder();
            int letters = random.nextInt(60);
            for (int i = 0; i < letters; i++) {
                note.append((char) (random.nextBoolean() ? 32 + random.nextInt(95) : random.nextInt(65_536)));
            }
            check(note.toString(), random);
        });
    }

    @Test
    void the_examples_with_one_letter_changed_are_never_thrown_at_anybody() {
        Rounds.each(20_260_303L, Rounds.count(150), (random, round) -> {
            StringBuilder note = new StringBuilder(
                    Notes.examples().get(random.nextInt(Notes.examples().size())));
            note.setCharAt(random.nextInt(note.length()), (char) (32 + random.nextInt(95)));
            check(note.toString(), random);
        });
    }

    @Test
    void a_note_of_any_length_is_answered() {
        NoteContext context = context(UnitSystem.METRIC);
        for (String piece : List.of("1", "x", "4x ", "1/2 ", "(", "\u0301")) {
            assertThat(Notes.read(piece.repeat(20_000), context).kind()).isEqualTo(Kind.REFUSED);
        }
    }

    private static void check(String note, RandomGenerator random) {
        UnitSystem units = random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.INCH;
        NoteContext context = random.nextInt(4) == 0 ? new NoteContext(units, null, List.of()) : context(units);
        NoteRead<List<Feature>> read = Notes.read(note, context);
        switch (read.kind()) {
            case ONE -> sound(((One<List<Feature>>) read).value(), ((One<?>) read).sentence());
            case SEVERAL -> assertThat(((Several<?>) read).offers()).isNotEmpty();
            case MISSING -> assertThat(((Missing<?>) read).question().asks()).endsWith("?");
            case REFUSED -> refused(note, (Refused<?>) read);
        }
        NoteRead<List<Feature>> likely = Notes.likely(note, List.of(), context);
        if (likely.kind() == Kind.ONE) {
            sound(((One<List<Feature>>) likely).value(), ((One<?>) likely).sentence());
        }
        Blanks.read(note, units);
        NoteSheet.read(note + "\n76x36\n" + note, context);
    }

    private static void refused(String note, Refused<?> refused) {
        assertThat(refused.message()).isNotBlank().endsWith(".");
        assertThat(refused.from()).isBetween(0, note.length());
        assertThat(refused.to()).isBetween(refused.from(), note.length());
    }

    private static void sound(List<Feature> features, String sentence) {
        assertThat(sentence).isNotBlank();
        for (Feature feature : features) {
            switch (feature.kind()) {
                case HOLE -> sizes(((Hole) feature).size(), ((Hole) feature).depth());
                case SLOT -> sizes(((Slot) feature).width(), ((Slot) feature).depth(), ((Slot) feature).length());
                case POCKET ->
                    sizes(((Pocket) feature).length(), ((Pocket) feature).width(), ((Pocket) feature).depth());
                default -> assertThat(feature.id()).isNotBlank();
            }
        }
    }

    private static void sizes(Size... sizes) {
        for (Size size : sizes) {
            if (size != null) {
                assertThat(size.leastMm()).isFinite().isPositive();
                assertThat(size.nominal().inside()).isFinite().isPositive();
                assertThat(size.greatestMm()).isGreaterThanOrEqualTo(size.leastMm());
            }
        }
    }

    private static NoteContext context(UnitSystem units) {
        String blank = units == UnitSystem.METRIC ? "100x60x25" : "4x3x1";
        return new NoteContext(
                units, ((One<BlankNote>) Blanks.read(blank, units)).value().blank(), List.of());
    }
}
