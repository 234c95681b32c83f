package setwright.job;

import java.util.List;
import setwright.quantity.UnitSystem;
import setwright.shop.ShopRow;

/**
 * What is planned.
 *
 * @param units in which the job is shown
 * @param numberOff how many parts
 * @param material id of the material's row, or {@code unknown-steel}
 * @param machine the machine as it stands before this job
 * @param features what the drawing asks for
 * @param relations between features
 * @param received ids of the features that the part already has
 * @param setUps in working order; empty while all is pencilled
 * @param chosen why a holding or a holder was taken against the ranking
 * @param rows copies of the shop rows that the job uses, so that it opens whole elsewhere
 */
public record JobPlan(
        Title title,
        UnitSystem units,
        int numberOff,
        String material,
        Blank blank,
        MachineAsItStands machine,
        List<Feature> features,
        List<Relation> relations,
        List<String> received,
        List<SetUp> setUps,
        List<Chosen> chosen,
        List<ShopRow> rows) {

    public JobPlan {
        features = List.copyOf(features);
        relations = List.copyOf(relations);
        received = List.copyOf(received);
        setUps = List.copyOf(setUps);
        chosen = List.copyOf(chosen);
        rows = List.copyOf(rows);
    }

    /** A plan without relations on a piece that has no features yet. */
    public JobPlan(
            Title title,
            UnitSystem units,
            int numberOff,
            String material,
            Blank blank,
            MachineAsItStands machine,
            List<Feature> features,
            List<SetUp> setUps,
            List<ShopRow> rows) {
        this(
                title, units, numberOff, material, blank, machine, features, List.of(), List.of(), setUps, List.of(),
                rows);
    }

    public JobPlan withTitle(Title changed) {
        return new JobPlan(
                changed, units, numberOff, material, blank, machine, features, relations, received, setUps, chosen,
                rows);
    }

    public JobPlan withUnits(UnitSystem changed) {
        return new JobPlan(
                title, changed, numberOff, material, blank, machine, features, relations, received, setUps, chosen,
                rows);
    }

    public JobPlan withNumberOff(int changed) {
        return new JobPlan(
                title, units, changed, material, blank, machine, features, relations, received, setUps, chosen, rows);
    }

    public JobPlan withMaterial(String changed) {
        return new JobPlan(
                title, units, numberOff, changed, blank, machine, features, relations, received, setUps, chosen, rows);
    }

    public JobPlan withBlank(Blank changed) {
        return new JobPlan(
                title, units, numberOff, material, changed, machine, features, relations, received, setUps, chosen,
                rows);
    }

    public JobPlan withMachine(MachineAsItStands changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, changed, features, relations, received, setUps, chosen, rows);
    }

    public JobPlan withFeatures(List<Feature> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, changed, relations, received, setUps, chosen, rows);
    }

    public JobPlan withSetUps(List<SetUp> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, features, relations, received, changed, chosen,
                rows);
    }

    public JobPlan withRows(List<ShopRow> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, features, relations, received, setUps, chosen,
                changed);
    }

    public JobPlan withRelations(List<Relation> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, features, changed, received, setUps, chosen, rows);
    }

    public JobPlan withReceived(List<String> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, features, relations, changed, setUps, chosen, rows);
    }

    public JobPlan withChosen(List<Chosen> changed) {
        return new JobPlan(
                title, units, numberOff, material, blank, machine, features, relations, received, setUps, changed,
                rows);
    }

    /** Why the holding of a set-up or the holder of an operation is not the first of the ranking; empty where nobody said. */
    public String because(String of) {
        return chosen.stream()
                .filter(one -> one.of().equals(of))
                .map(Chosen::reason)
                .findFirst()
                .orElse("");
    }
}
