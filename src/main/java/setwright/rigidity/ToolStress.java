package setwright.rigidity;

/**
 * The stress in a tool where it is greatest.
 *
 * @param place from the holder's face, mm
 * @param bending N/mm²
 * @param torsion N/mm²
 */
public record ToolStress(double place, double bending, double torsion) {
    /** √(σ² + 3 τ²), N/mm². */
    public double combined() {
        return Rod.combined(bending, torsion);
    }
}
