package setwright.caution.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import setwright.caution.Caution;
import setwright.caution.Judge;
import setwright.caution.Severity;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.SquaringUp;
import setwright.job.ViseHolding;
import setwright.plan.Plan;

/** The loads of a squared blank, walked from the first to the last. */
class SquaringUpTest {
    private static final Job BLANK = Toolroom.job("100x60x40", "mild steel", "");

    private static Plan squared(Job job) {
        return Toolroom.plan(SquaringUp.of(Toolroom.plan(job).drawnUp(), Optional.of("stop-vise-end")));
    }

    private static Job with(Job job, Map<Side, FaceState> faces) {
        Block block = (Block) job.plan().blank();
        return job.withPlan(job.plan().withBlank(new Block(block.length(), block.depth(), block.height(), faces)));
    }

    private static Side facing(DrawnSetUp setUp, Heading heading) {
        return new Attitude(setUp.up().value(), setUp.quarterTurns()).sideFacing(heading);
    }

    private static List<Side> cut(Plan plan) {
        List<Side> cut = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            for (DrawnOperation operation : setUp.operations()) {
                if (operation.kind() == Operation.Kind.FACE) {
                    plan.job().plan().features().stream()
                            .filter(feature -> operation.features().contains(feature.id()))
                            .forEach(feature -> cut.add(feature.side()));
                }
            }
        }
        return cut;
    }

    /** Every load sits on a clean or cut side when one of the pair is; the bar goes in while the moving jaw meets a rough one. */
    private static void walk(Plan plan, Set<Side> clean) {
        Set<Side> done = EnumSet.noneOf(Side.class);
        done.addAll(clean);
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            Side solid = facing(setUp, Heading.PLUS_Y);
            Side moving = facing(setUp, Heading.MINUS_Y);
            if (done.contains(solid) || done.contains(moving)) {
                assertThat(done).as(setUp.title()).contains(solid);
            }
            boolean first = done.equals(clean) && !done.contains(solid);
            assertThat(first || done.contains(solid)).as(setUp.title()).isTrue();
            boolean bar = ((DrawnVise) setUp.holding()).between().value() == ViseHolding.Between.ROUND_BAR;
            assertThat(bar).as(setUp.title()).isEqualTo(!done.contains(moving));
            done.add(setUp.up().value());
        }
        assertThat(done).containsExactlyInAnyOrder(Side.values());
    }

    @Test
    void a_sawn_blank_is_squared_in_six_loads_each_side_cut_once() {
        Plan plan = squared(BLANK);

        assertThat(plan.drawnUp().setUps()).hasSize(6);
        assertThat(cut(plan)).containsExactlyInAnyOrder(Side.values());
        assertThat(cut(plan).subList(0, 4)).containsExactly(Side.BOTTOM, Side.FRONT, Side.BACK, Side.TOP);
        walk(plan, EnumSet.noneOf(Side.class));
    }

    @Test
    void the_last_four_loads_lie_on_or_against_what_was_cut_and_the_second_of_each_pair_lies_on_the_first() {
        List<DrawnSetUp> loads = squared(BLANK).drawnUp().setUps();

        assertThat(facing(loads.get(2), Heading.MINUS_Z)).isEqualTo(Side.FRONT);
        assertThat(facing(loads.get(3), Heading.MINUS_Z)).isEqualTo(Side.BOTTOM);
        assertThat(facing(loads.get(5), Heading.MINUS_Z)).isEqualTo(Side.LEFT);
    }

    @Test
    void bright_ground_and_machined_sides_are_not_cut_and_serve_as_datum() {
        for (FaceState state :
                List.of(FaceState.BRIGHT_DRAWN, FaceState.GROUND, FaceState.MACHINED, FaceState.EXTRUDED)) {
            Job bar = with(BLANK, Map.of(Side.TOP, state, Side.BOTTOM, state, Side.FRONT, state, Side.BACK, state));
            Plan plan = squared(bar);

            assertThat(cut(plan)).containsExactly(Side.LEFT, Side.RIGHT);
            walk(plan, EnumSet.of(Side.TOP, Side.BOTTOM, Side.FRONT, Side.BACK));
        }
    }

    @Test
    void a_blank_with_one_clean_side_is_squared_from_it() {
        Plan plan = squared(with(BLANK, Map.of(Side.TOP, FaceState.GROUND)));

        assertThat(cut(plan)).hasSize(5).doesNotContain(Side.TOP);
        walk(plan, EnumSet.of(Side.TOP));
        assertThat(facing(plan.drawnUp().setUps().get(0), Heading.PLUS_Y)).isEqualTo(Side.TOP);
    }

    @Test
    void the_side_with_holes_comes_last_and_gets_its_holes_there() {
        Plan plan = squared(Toolroom.job("100x60x40", "mild steel", "face to 38\n4x M6 x 12 deep\n76x36"));
        List<DrawnSetUp> loads = plan.drawnUp().setUps();

        assertThat(loads).hasSize(6);
        assertThat(loads.get(5).up().value()).isEqualTo(Side.TOP);
        assertThat(loads.get(5).operations()).extracting(DrawnOperation::kind).contains(Operation.Kind.TAP);
        assertThat(cut(plan)).containsExactlyInAnyOrder(Side.values());
        walk(plan, EnumSet.noneOf(Side.class));
    }

    @Test
    void where_the_drawing_faces_one_side_after_the_other_it_is_squared_in_that_order_and_worked_last() {
        Plan plan =
                squared(Toolroom.job("100x60x40", "mild steel", "top to 38.5\nbottom to 37\n4x M6 x 12 deep\n76x36"));
        List<DrawnSetUp> loads = plan.drawnUp().setUps();

        assertThat(loads).hasSize(7);
        assertThat(cut(plan)).startsWith(Side.TOP).containsExactlyInAnyOrder(Side.values());
        assertThat(loads.get(6).up().value()).isEqualTo(Side.TOP);
        assertThat(loads.get(6).operations()).extracting(DrawnOperation::kind).contains(Operation.Kind.TAP);
        assertThat(Judge.judge(plan).open(Severity.STOP)).isEmpty();
    }

    @Test
    void every_face_leaves_enough_for_the_next_and_comes_down_to_the_drawing() {
        Plan plan = squared(Toolroom.job("100x60x40", "mild steel", "face to 38"));
        double bottom = across(plan, Side.BOTTOM);

        assertThat(across(plan, Side.TOP)).isEqualTo(38);
        assertThat(bottom).isBetween(38.5, 39.5);
        assertThat(across(plan, Side.BACK)).isLessThan(across(plan, Side.FRONT));
    }

    private static double across(Plan plan, Side side) {
        return plan.job().plan().features().stream()
                .filter(feature -> feature instanceof Face && feature.side() == side)
                .mapToDouble(feature -> ((Face) feature).across().nominal().inside())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void squaring_up_twice_is_squaring_up_once() {
        Job once = squared(BLANK).job();

        assertThat(squared(once).job()).isEqualTo(once);
    }

    @Test
    void a_squared_job_is_saved_and_read_again() {
        Job squared = squared(BLANK).job();

        assertThat(JobFile.read(JobFile.text(squared, null), Toolroom.SHOP))
                .isInstanceOfSatisfying(
                        JobRead.Opened.class, opened -> assertThat(opened.job()).isEqualTo(squared));
    }

    @Test
    void a_round_bar_is_not_squared_up() {
        Job bar = Toolroom.job("round 40 x 100", "mild steel", "");

        assertThat(SquaringUp.of(Toolroom.plan(bar).drawnUp(), Optional.empty()))
                .isEqualTo(bar);
    }

    @Test
    void nothing_stops_an_ordinary_block_from_being_squared_up() {
        assertThat(Judge.judge(squared(BLANK)).open(Severity.STOP))
                .extracting(Caution::message)
                .isEmpty();
    }
}
