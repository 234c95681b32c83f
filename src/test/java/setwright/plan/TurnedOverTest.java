package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.AluminiumBlock.mm;
import static setwright.plan.AluminiumBlock.size;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.geometry.Stock;
import setwright.geometry.plane.Point2;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Pattern;
import setwright.job.Size;
import setwright.plan.part.SetUpStage;

/**
 * A block 100 x 60 of 28 to 29 high, faced on top to 27 with a hole 10 through from there, then turned over and faced on
 * the bottom to 25; volumes on paper in the comments.
 */
class TurnedOverTest {
    private final Plan plan = Planner.plan(job(), BearingBlock.shop());
    private final SetUpStage top = plan.part().setUps().get(0);
    private final SetUpStage bottom = plan.part().setUps().get(1);

    private static Job job() {
        Job job = AluminiumBlock.with(
                List.of("100 mm", "60 mm", "28 mm"),
                face("face1", Side.TOP, "27 mm"),
                hole(),
                face("face2", Side.BOTTOM, "25 mm"));
        Size height = new Size(mm("28 mm"), mm("28 mm"), mm("29 mm"));
        Block block = new Block(
                size("100 mm"), size("60 mm"), height, job.plan().blank().faces());
        return job.withPlan(job.plan().withBlank(block));
    }

    private static Face face(String id, Side side, String across) {
        return new Face(id, "", side, size(across), null, GotBy.DIAL);
    }

    private static Hole hole() {
        return new Hole(
                "hole1",
                "10 thru",
                Side.TOP,
                Hole.Make.PLAIN,
                size("10 mm"),
                null,
                null,
                null,
                new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(mm("30 mm"), mm("12 mm")))),
                null,
                GotBy.TOOL);
    }

    private static Stock end(SetUpStage stage) {
        return stage.operations().get(stage.operations().size() - 1).after();
    }

    @Test
    void each_side_has_its_set_up_with_its_operations() {
        assertThat(plan.drawnUp().setUps())
                .extracting(setUp -> setUp.up().value())
                .containsExactly(Side.TOP, Side.BOTTOM);
        assertThat(bottom.operations()).extracting(one -> one.operation()).containsExactly("face2-face");
    }

    /** 100 · 60 · 27 less π 5² · 27 = 159879 mm³; the second set-up starts with what the first left. */
    @Test
    void the_second_set_up_starts_with_the_stock_that_the_first_left() {
        double left = 100 * 60 * 27 - Math.PI * 25 * 27;
        assertThat(end(top).bulk().volume()).isCloseTo(left, within(1.0));
        assertThat(bottom.start().bulk().volume()).isCloseTo(left, within(1.0));
    }

    /** Turned over about its length the hole comes to lie 12 mm before the middle: there one looks right through. */
    @Test
    void the_hole_is_there_where_it_is_seen_from_below() {
        Point2 middle = new Point2(
                (bottom.heights().left() + bottom.heights().right()) / 2,
                (bottom.heights().front() + bottom.heights().back()) / 2);
        assertThat(bottom.start().heightAt(middle.plus(new Point2(30, -12)))).isEmpty();
        assertThat(bottom.start().heightAt(middle.plus(new Point2(30, 12)))).isPresent();
    }

    /** The part stands on its finished top: 27 is its start there, 25 its finish. */
    @Test
    void the_heights_of_the_second_set_up_count_from_the_face_it_stands_on() {
        double foot = bottom.heights().partBottom();
        assertThat(bottom.start().layers().get(0).zLow()).isCloseTo(foot, within(1e-9));
        assertThat(bottom.start().top() - foot).isCloseTo(27, within(1e-9));
        assertThat(bottom.heights().startTop() - foot).isCloseTo(27, within(1e-9));
        assertThat(bottom.heights().finishedTop() - foot).isCloseTo(25, within(1e-9));
    }

    /** 2 mm · (6000 - π 5²) = 11843 mm³ come off the bottom. */
    @Test
    void facing_the_bottom_takes_what_is_left_over() {
        double removed = bottom.start().bulk().volume() - end(bottom).bulk().volume();
        assertThat(removed).isCloseTo(2 * (6000 - Math.PI * 25), within(1.0));
        assertThat(plan.cut().operation("face2-face").orElseThrow().passes()
                        * plan.cut().operation("face2-face").orElseThrow().depth())
                .isCloseTo(2, within(0.05));
    }
}
