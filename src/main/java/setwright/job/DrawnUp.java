package setwright.job;

import java.util.List;
import java.util.Optional;

/** The job with every open place filled in pencil; what every room below the pencil reads. */
public record DrawnUp(Job job, List<DrawnSetUp> setUps) {
    public DrawnUp {
        setUps = List.copyOf(setUps);
    }

    public Optional<DrawnSetUp> setUp(String id) {
        return setUps.stream().filter(setUp -> setUp.id().equals(id)).findFirst();
    }
}
