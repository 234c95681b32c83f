package setwright.location.budget;

import java.util.ArrayList;
import java.util.List;
import setwright.location.Contributor;
import setwright.quantity.Source;
import setwright.shop.Axis;

/**
 * How true one slide goes to a figure; half-widths in millimetres.
 *
 * @param reading setting the dial, readout or stop
 * @param screw what screw or scale is out over the way of one feature
 * @param backlash left of it, taken up from one side; nought for a knee, whose weight takes it up
 * @param read in words
 */
public record AxisErrors(double reading, double screw, double backlash, String read) {
    /** A readout of 0.005 mm. */
    public static final AxisErrors READOUT = new AxisErrors(0.005, 0.005, 0, "readout");

    /** A stop that the slide is brought up to with the same push. */
    public static final AxisErrors STOP = new AxisErrors(0.02, 0, 0, "coming to the stop");

    private static final double RESIDUAL = 0.00762;
    private static final double SHORT_WAY = 0.005;
    private static final Source COMMON = Source.of("common practice");

    public static AxisErrors dial(double division, boolean weighted) {
        return new AxisErrors(division / 2, SHORT_WAY, weighted ? 0 : RESIDUAL, "dial, half a division");
    }

    /** How a slide of a machine is read. */
    public static AxisErrors of(Axis axis, boolean weighted) {
        return switch (axis.read()) {
            case DIAL -> dial(axis.division().inside(), weighted);
            case READOUT -> READOUT;
        };
    }

    /** How near the slide comes back to a figure that it stood at: screw and scale are as they were. */
    public double back() {
        return reading + backlash;
    }

    /** The head's own dial set without measuring: division, slack of its slide. */
    public static AxisErrors boringHead() {
        return new AxisErrors(0.01, 0, RESIDUAL, "dial of the boring head");
    }

    public List<Contributor> contributors() {
        List<Contributor> all = new ArrayList<>();
        all.add(Contributor.eachAxis(read, reading, COMMON).halvedBy("measuring and correcting"));
        if (screw > 0) {
            all.add(Contributor.eachAxis("screw or scale", screw, COMMON).halvedBy("a readout"));
        }
        if (backlash > 0) {
            all.add(Contributor.eachAxis("backlash", backlash, COMMON).halvedBy("coming up from one side"));
        }
        return List.copyOf(all);
    }
}
