package setwright.rigidity;

import setwright.quantity.Band;

/** Springs that are known as a band only; stiff ends give the low end of a deflection. */
public record SpringBand(Springs soft, Springs expected, Springs stiff) {
    /** Springs that are known sharply. */
    public static SpringBand of(Springs springs) {
        return new SpringBand(springs, springs, springs);
    }

    /** The same with a machine that is known as a band, N/mm. */
    public SpringBand onMachine(Band machine) {
        return new SpringBand(
                soft.withMachine(machine.low()),
                expected.withMachine(machine.expected()),
                stiff.withMachine(machine.high()));
    }

    /** How far a tool gives at a place for each newton at another, with stiff, expected and soft springs; mm/N. */
    public Band compliance(ToolBeam beam, double place, double load) {
        double tool = beam.compliance(place, load);
        return new Band(
                tool + stiff.compliance(place, load),
                tool + expected.compliance(place, load),
                tool + soft.compliance(place, load));
    }
}
