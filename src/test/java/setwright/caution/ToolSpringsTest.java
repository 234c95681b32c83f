package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.Size;

class ToolSpringsTest {
    private static final String SLUG = "tool-springs";

    @Test
    void half_the_width_between_the_limits_is_what_is_allowed() {
        Caution caution = Cases.longEndMill(500).found(SLUG).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.CAUTION);
        assertThat(caution.figure().limit()).isCloseTo(0.1, within(1e-9));
        assertThat(caution.message()).contains("0.100 mm either way");
    }

    @Test
    void a_general_tolerance_never_fires() {
        assertThat(Cases.longEndMill(500).with(ToolSpringsTest::general).found(SLUG))
                .isEmpty();
    }

    private static Job general(Job job) {
        List<Feature> features = job.plan().features().stream()
                .map(feature -> feature instanceof Face face
                        ? (Feature) new Face(
                                face.id(),
                                face.note(),
                                face.side(),
                                Size.of(face.across().nominal()),
                                face.finish(),
                                face.got())
                        : feature)
                .toList();
        return job.withPlan(job.plan().withFeatures(features));
    }

    @Test
    void a_face_mill_on_its_arbor_is_stout_enough() {
        assertThat(Cases.block().found(SLUG)).isEmpty();
    }
}
