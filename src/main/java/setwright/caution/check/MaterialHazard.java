package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.shop.Material;

/** What bites with the chips or dust of the material. Said once, where the job begins. */
public final class MaterialHazard implements Check {
    @Override
    public String slug() {
        return "material-hazard";
    }

    @Override
    public List<Finding> look(Plan plan) {
        Material material = plan.rows().material();
        String hazard = material.hazard();
        return plan.drawnUp().setUps().stream()
                .limit(1)
                .map(setUp -> hazard == null ? Finding.HOLDS : fails(setUp, material, hazard))
                .toList();
    }

    private Finding fails(DrawnSetUp setUp, Material material, String hazard) {
        Caution.Place place = Caution.Place.ofSetUp(setUp.id(), material.id(), material.name());
        return Finding.fails(
                place,
                slug(),
                Severity.NOTE,
                material.name() + " " + place.address() + ", " + hazard + ": take care of it before the first cut.");
    }
}
