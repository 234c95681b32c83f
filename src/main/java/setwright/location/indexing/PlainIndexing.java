package setwright.location.indexing;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** The crank from hole to hole of one circle. */
public final class PlainIndexing {
    public static final Procedure PLAIN = new Procedure(
            "turns of the crank",
            List.of(
                    "t = R / N turns of the crank, R of them to one of the spindle",
                    "a circle serves where its holes times the part of a turn are a whole number",
                    "the plate that is on the head first, then the largest circle: less arc for an error of a hole"),
            Unit.NONE,
            Source.of("Practical Treatise on Milling and Milling Machines (1914) p. 50-54; largest circle: Navy manual"
                    + " 14345, chapter 14 (enginemechanics.tpub.com/14345)"));

    public static final Procedure ANGLE = new Procedure(
            "turns of the crank for an angle",
            List.of(
                    "t = R θ / 360 turns of the crank; at 40 to 1 one turn is 9 degrees",
                    "the circle whose nearest hole is off least; of equals the largest"),
            Unit.DEG,
            Source.of("Practical Treatise on Milling and Milling Machines (1914) p. 54"
                    + " (en.wikisource.org, djvu/60)"));

    private PlainIndexing() {}

    /** Every circle that makes the turn exactly: the mounted plate first, then the largest circle. */
    public static List<CrankMove> exact(Rational turns, IndexHead head) {
        return moves(turns, head)
                .filter(move -> move.inTurns().equals(turns))
                .sorted(leastTrouble(head))
                .toList();
    }

    /** The hole that comes nearest, of any circle. */
    public static CrankMove nearest(Rational turns, IndexHead head) {
        return moves(turns, head)
                .min(Comparator.comparing((CrankMove move) -> off(move, turns)).thenComparing(leastTrouble(head)))
                .orElseThrow();
    }

    private static Rational off(CrankMove move, Rational turns) {
        Rational off = move.inTurns().minus(turns);
        return off.signum() < 0 ? off.negate() : off;
    }

    private static Comparator<CrankMove> leastTrouble(IndexHead head) {
        return Comparator.comparing((CrankMove move) -> !move.plate().equals(head.mounted()))
                .thenComparing(move -> -move.circle())
                .thenComparing(CrankMove::plate);
    }

    /** On every circle the hole nearest to the turn. */
    private static Stream<CrankMove> moves(Rational turns, IndexHead head) {
        return head.plates().faces().stream()
                .flatMap(face -> face.circles().stream().map(circle -> onCircle(turns, circle, face.name())));
    }

    private static CrankMove onCircle(Rational turns, int circle, String plate) {
        BigInteger spaces = turns.times(circle).plus(Rational.of(1, 2)).floor();
        BigInteger[] parts = spaces.divideAndRemainder(BigInteger.valueOf(circle));
        return new CrankMove(parts[0].longValueExact(), parts[1].intValueExact(), circle, plate);
    }
}
