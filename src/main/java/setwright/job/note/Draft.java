package setwright.job.note;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Pattern.Place;
import setwright.job.Size;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** What the pieces of one note say, before it is known whether they make something. */
final class Draft {
    /** The text that is read, answers put in. */
    final String note;

    /** The note as it was typed. */
    final String typed;

    final NoteContext context;
    final Numbers numbers;

    int count;

    @Nullable
    Head head;

    /** The mouth of a hole, where the note has one. */
    @Nullable
    Head mouth;

    /** Where its word ends. */
    int mouthAt;

    @Nullable
    Piece thread;

    /** Sizes joined by x; the first chain is of the thing itself, a second one of two is a rectangle of holes. */
    final List<List<Measured>> chains = new ArrayList<>();

    /** The same of the mouth. */
    final List<List<Measured>> mouthChains = new ArrayList<>();

    /** Flags that a word sets, with the piece that set them. */
    final Map<Said, Piece> said = new LinkedHashMap<>();

    final List<Place> places = new ArrayList<>();

    /** The corner that places are counted from, in words. */
    final List<Piece> corner = new ArrayList<>();

    /** Sides named without on, from or in. */
    final List<Piece> sides = new ArrayList<>();

    @Nullable
    Side side;

    @Nullable
    Measured circle;

    @Nullable
    Measured on;

    final List<Measured> pitch = new ArrayList<>();
    int rows;

    @Nullable
    Typed<Length> radius;

    @Nullable
    Typed<Length> finish;

    @Nullable
    Typed<Angle> turned;

    /** The angle that stands alone: of a dovetail, a countersink. */
    @Nullable
    Typed<Angle> angle;

    /** Of teeth: pitch diameter over teeth. */
    @Nullable
    Typed<Length> module;

    /** Longer lines among graduations. */
    final List<Line> lines = new ArrayList<>();

    /** Id of another feature that the note names. */
    @Nullable
    String other;

    Draft(String note, String typed, NoteContext context, Numbers numbers) {
        this.note = note;
        this.typed = typed;
        this.context = context;
        this.numbers = numbers;
    }

    /** What clauses say, each in words for a message. */
    enum Said {
        THROUGH("a depth through"),
        OPEN("open ends"),
        CLOSED("closed ends"),
        CENTRED("a place"),
        PLACE("a place"),
        IN_LINE("a line of places"),
        UPRIGHT("a direction"),
        TURNED("a direction"),
        TO("a size that is left"),
        MALE("a standing form"),
        RADIUS("a radius"),
        FINISH("a roughness"),
        CIRCLE("a bolt circle"),
        PITCH("a pitch"),
        ROWS("rows"),
        ANGLE("an angle alone"),
        ON("a diameter that it is on"),
        MODULE("a module"),
        LINES("longer lines"),
        OTHER("another feature");

        private final String words;

        Said(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Every so many lines one is so long; with the piece that says how many. */
    record Line(int every, Size length, Piece at) {}

    boolean says(Said what) {
        return said.containsKey(what);
    }

    /** The piece that says so. */
    Piece piece(Said what) {
        return Objects.requireNonNull(said.get(what));
    }

    boolean isPlaced() {
        return says(Said.CENTRED) || !places.isEmpty();
    }

    /** Whether the note only says where something is. */
    boolean onlyPlaces() {
        boolean pair = chains.size() == 1
                && chains.get(0).size() == 2
                && chains.get(0).stream().allMatch(size -> size.role() == Measured.Role.UNSAID);
        boolean placing = isPlaced() || circle != null || !pitch.isEmpty() || side != null || !sides.isEmpty() || pair;
        return head == null
                && mouth == null
                && thread == null
                && count == 0
                && placing
                && (chains.isEmpty() || pair)
                && radius == null
                && !says(Said.THROUGH);
    }
}
