package setwright.rigidity.stability;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.rigidity.BeamSection;
import setwright.rigidity.MountedTool;
import setwright.shop.ToolMaterial;

/** The slowest way in which a tool swings on its springs, estimated; what was measured is better in every way. */
public final class FirstMode {
    public static final Procedure FREQUENCY = new Procedure(
            "natural frequency of the tool",
            List.of(
                    "the tool in short lengths, each with its mass; the holder's body sits at its face",
                    "deflections by the springs and the bending of the tool under the inertia of a shape",
                    "the shape that they give is put in again until it stays (Stodola and Vianello)"),
            Unit.HZ,
            Source.of("from memory: textbooks on vibration; the mass of spindle and head is left out"));

    public static final Table DAMPING = new Table(
            "damping of the tool",
            "measured sets of cutters in machining centres: 0.011 to 0.12, the middle one of nine modes 0.017",
            Unit.NONE,
            Source.of(
                    "inputs of published examples as transcribed in an academic code repository; none for a knee mill"));

    public static final Table DENSITY = new Table(
            "density of tools",
            "high speed steel 8100, carbide 14500, other steel 7850 kg/m³; flutes count as a rod as stiff as they are",
            Unit.KG_PER_M3,
            Source.of("from memory"));

    /** kg/mm³. */
    public static final double STEEL_DENSITY = 7.85e-6;

    private static final double SLICES = 24;
    private static final int ROUNDS = 200;
    private static final double SETTLED = 1e-10;
    /** N in kg mm/s². */
    private static final double NEWTON = 1000;

    private final double tip;
    private final MountedTool tool;
    private final double[] places;
    private final double[] masses;

    private FirstMode(MountedTool tool, double[] places, double[] masses) {
        this.tool = tool;
        this.tip = tool.beam().stickOut();
        this.places = places;
        this.masses = masses;
    }

    /** As a share of the critical, from the slenderest tool to the softest spindle. */
    public static Band damping() {
        return new Band(0.011, 0.017, 0.12);
    }

    /** kg/mm³. */
    public static double density(ToolMaterial material) {
        return switch (material) {
            case HSS -> 8.1e-6;
            case CARBIDE -> 14.5e-6;
        };
    }

    /**
     * The mode at the tip, with the damping that is expected.
     *
     * @param density of the tool, kg/mm³
     * @param holder mass of the holder's body, kg
     */
    public static Mode of(MountedTool tool, double density, double holder) {
        double slice = tool.beam().stickOut() / SLICES;
        List<Double> places = new java.util.ArrayList<>(List.of(0.0));
        List<Double> masses = new java.util.ArrayList<>(List.of(holder));
        double from = 0;
        for (BeamSection section : tool.beam().sections()) {
            int count = Math.max(1, (int) Math.ceil(section.length() / slice));
            double length = section.length() / count;
            for (int i = 0; i < count; i++) {
                places.add(from + (i + 0.5) * length);
                masses.add(density * length * Math.PI / 4 * section.diameter() * section.diameter());
            }
            from += section.length();
        }
        return new FirstMode(tool, plain(places), plain(masses)).mode();
    }

    private static double[] plain(List<Double> boxed) {
        return boxed.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private Mode mode() {
        double[][] give = give();
        double[] shape = give[0].clone();
        double squared = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double[] next = swung(give, shape);
            double found = NEWTON * weighed(shape, next) / weighed(next, next);
            boolean settled = Math.abs(found - squared) <= SETTLED * found;
            squared = found;
            shape = next;
            if (settled) {
                break;
            }
        }
        double atTip = squared / NEWTON * swing(give[0], shape);
        double stiffness = squared / NEWTON * weighed(shape, shape) / (atTip * atTip);
        return new Mode(Math.sqrt(squared), damping().expected(), stiffness);
    }

    /** Of the tip, then of every place, under a force at every place, mm/N. */
    private double[][] give() {
        double[][] give = new double[places.length + 1][places.length];
        for (int j = 0; j < places.length; j++) {
            give[0][j] = tool.compliance(tip, places[j]).total();
            for (int i = 0; i < places.length; i++) {
                give[i + 1][j] = tool.compliance(places[i], places[j]).total();
            }
        }
        return give;
    }

    /** Where the inertia of a shape brings every place. */
    private double[] swung(double[][] give, double[] shape) {
        double[] next = new double[shape.length];
        for (int i = 0; i < next.length; i++) {
            next[i] = swing(give[i + 1], shape);
        }
        return next;
    }

    private double swing(double[] give, double[] shape) {
        double sum = 0;
        for (int j = 0; j < shape.length; j++) {
            sum += give[j] * masses[j] * shape[j];
        }
        return sum;
    }

    private double weighed(double[] one, double[] other) {
        double sum = 0;
        for (int j = 0; j < masses.length; j++) {
            sum += one[j] * masses[j] * other[j];
        }
        return sum;
    }
}
