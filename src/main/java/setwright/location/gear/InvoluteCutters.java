package setwright.location.gear;

import java.util.List;
import java.util.Optional;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The sets of eight and of fifteen involute form cutters. Every cutter serves from its least number of teeth to where the
 * next begins. Module cutters are numbered the other way round.
 */
public final class InvoluteCutters {
    public static final int LEAST_TEETH = 12;

    public static final Procedure NUMBER = new Procedure(
            "number of the involute cutter",
            List.of(
                    "set of eight by diametral pitch: 1 from 135 teeth to a rack, 2 from 55, 3 from 35, 4 from 26,"
                            + " 5 from 21, 6 from 17, 7 from 14, 8 from 12",
                    "the half numbers between them serve the upper part of a range",
                    "module cutters count the other way round: 1 is 12 and 13 teeth, 8 is 135 to a rack",
                    "helical gears by N / cos³ of the helix angle, bevel gears by N / cos of the pitch angle"),
            Unit.NONE,
            Source.of("Rose, Modern Machine-Shop Practice (1887-8) vol. 1 (bitlit.ru), its No. 8 printed 12 to 14 for"
                    + " 12 to 13; half numbers and the order of module cutters from memory"));

    private static final int SET = 8;

    /** A cutter of a set of fifteen: its number doubled, its least and greatest count of teeth. */
    private record Range(int doubled, int from, int to) {}

    private static final List<Range> EIGHT = List.of(
            new Range(2, 135, Integer.MAX_VALUE),
            new Range(4, 55, 134),
            new Range(6, 35, 54),
            new Range(8, 26, 34),
            new Range(10, 21, 25),
            new Range(12, 17, 20),
            new Range(14, 14, 16),
            new Range(16, 12, 13));

    private static final List<Range> HALVES = List.of(
            new Range(3, 80, 134),
            new Range(5, 42, 54),
            new Range(7, 30, 34),
            new Range(9, 23, 25),
            new Range(11, 19, 20),
            new Range(13, 15, 16),
            new Range(15, 13, 13));

    private InvoluteCutters() {}

    /** How the cutters of a set are numbered. */
    public enum Numbering {
        DIAMETRAL_PITCH,
        MODULE;

        private double number(Range range) {
            double number = range.doubled() / 2.0;
            return this == MODULE ? SET + 1 - number : number;
        }
    }

    /**
     * The cutter of a set of eight.
     *
     * @throws IllegalArgumentException below 12 teeth, for which no cutter of the sets is made
     */
    public static int number(double teeth, Numbering numbering) {
        return find(EIGHT, teeth)
                .map(range -> (int) numbering.number(range))
                .orElseThrow(() -> new IllegalArgumentException("The sets begin at " + LEAST_TEETH
                        + " teeth; fewer are generated, not cut with a form cutter."));
    }

    /** The half number of a set of fifteen that comes nearer; empty where the whole number does. */
    public static Optional<Double> half(double teeth, Numbering numbering) {
        return find(HALVES, teeth).map(numbering::number);
    }

    /** A count between two whole ones, as a helical gear has it, belongs to the lower. */
    private static Optional<Range> find(List<Range> ranges, double teeth) {
        long whole = (long) Math.floor(teeth + 1e-9);
        return ranges.stream()
                .filter(range -> whole >= range.from() && whole <= range.to())
                .findFirst();
    }
}
