package setwright.plan.pencil;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Feature;
import setwright.job.SetUp;

/**
 * The features of a side shared out over the set-ups that have it up: the first cuts all that no other one has written
 * down, each other one what its operations say.
 */
record SideFeatures(Drafting drafting, SetUp setUp, Side up) {
    /** What is cut here. */
    List<Feature> cut() {
        List<SetUp> others = others();
        return drafting.on(up).stream()
                .filter(feature -> !drafting.job().plan().received().contains(feature.id()))
                .filter(feature ->
                        has(setUp, feature) || first() && others.stream().noneMatch(other -> has(other, feature)))
                .toList();
    }

    /** What is there already when the part is put in: as received, or cut in a set-up before. */
    List<Feature> before() {
        return drafting.job().plan().features().stream()
                .filter(feature -> drafting.job().plan().received().contains(feature.id())
                        || earlier().stream().anyMatch(one -> has(one, feature)))
                .toList();
    }

    private List<SetUp> others() {
        return all().stream()
                .filter(other -> !other.id().equals(setUp.id()) && Pencil.sideUp(drafting, other) == up)
                .toList();
    }

    private List<SetUp> earlier() {
        return all().stream().takeWhile(other -> !other.id().equals(setUp.id())).toList();
    }

    private boolean first() {
        return earlier().stream().noneMatch(other -> Pencil.sideUp(drafting, other) == up);
    }

    private List<SetUp> all() {
        return drafting.job().plan().setUps();
    }

    private static boolean has(SetUp setUp, Feature feature) {
        return setUp.operations().stream().anyMatch(one -> one.features().contains(feature.id()));
    }
}
