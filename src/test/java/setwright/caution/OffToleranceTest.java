package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.geometry.Side;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Relation;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.plan.place.FeatureBudget;

class OffToleranceTest {
    private static final String SLUG = "off-tolerance";

    private static Size size(String nominal, String least, String greatest) {
        return new Size(
                SmallShop.length(nominal + " mm"), SmallShop.length(least + " mm"), SmallShop.length(greatest + " mm"));
    }

    /** 26 H7: 0 to +0.021 mm. */
    private static Hole bored(GotBy got) {
        return new Hole(
                "h1",
                "26 H7 thru",
                Side.TOP,
                Hole.Make.BORED,
                size("26", "26", "26.021"),
                null,
                "H7",
                null,
                SmallJobs.middle(),
                null,
                got);
    }

    private static Face faced(String id, String least, String greatest, GotBy got) {
        return new Face(id, "face to 38", Side.TOP, size("38", least, greatest), null, got);
    }

    private static Slot slot(String least, String greatest, GotBy got) {
        Placed middle = new Placed(Pattern.Datum.CENTRE, SmallShop.length("0 mm"), SmallShop.length("0 mm"), null);
        return new Slot(
                "sl1",
                "slot 12 x 6 deep",
                Side.TOP,
                size("12", least, greatest),
                Size.of(SmallShop.length("6 mm")),
                null,
                middle,
                null,
                got);
    }

    /** The shop with a bar of 10 that reaches 60 in its boring head. */
    private static Bench of(Hole bored) {
        return of(new Feature[] {bored})
                .in(SmallShop.shop().with(List.of(BoreCases.bar("10"), SmallHolders.boringHead())));
    }

    private static Bench of(Feature... features) {
        return Bench.of(SmallJobs.job("Plate", 1, SmallMaterials.STEEL, SmallJobs.block("82", "52", "40"), features));
    }

    @Test
    void a_bored_h7_hole_that_is_measured_and_corrected_holds_and_the_same_to_the_dial_does_not() {
        assertThat(of(bored(GotBy.MEASURED)).found(SLUG)).isEmpty();
        assertThat(of(bored(GotBy.MEASURED)).note(SLUG)).isEmpty();
        assertThat(of(bored(GotBy.DIAL)).found(SLUG)).hasSize(1).allSatisfy(off -> {
            assertThat(off.subject()).isEqualTo("h1-diameter");
            assertThat(off.message()).contains("Diameter of h1", "0.011 mm is allowed either way");
        });
    }

    @Test
    void measuring_and_correcting_is_what_mends_a_hole_bored_to_the_dial() {
        Bench dial = of(bored(GotBy.DIAL));

        assertThat(dial.remedies(dial.found(SLUG).get(0)))
                .extracting(Remedy::text)
                .contains("Measure h1 before the last cut and take that by the gauge.");
    }

    @Test
    void a_face_by_the_knee_dial_holds_a_tenth_and_not_a_hundredth() {
        assertThat(of(faced("f1", "37.9", "38.1", GotBy.DIAL)).found(SLUG)).isEmpty();
        assertThat(of(faced("f1", "37.99", "38.01", GotBy.DIAL)).found(SLUG)).hasSize(1);
    }

    @Test
    void a_slot_as_wide_as_its_cutter_holds_five_hundredths_and_not_two() {
        assertThat(of(slot("12", "12.05", GotBy.TOOL)).found(SLUG)).isEmpty();
        assertThat(of(slot("11.99", "12.01", GotBy.TOOL)).found(SLUG)).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(GotBy.class)
    void what_the_drawing_leaves_general_has_no_budget(GotBy got) {
        Bench general = of(new Face("f1", "face to 38", Side.TOP, Size.of(SmallShop.length("38")), null, got));

        assertThat(general.plan().place().budgets()).isEmpty();
        assertThat(general.found(SLUG)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Relation.Kind.class)
    void every_relation_has_a_budget_that_gets_no_better_in_two_loadings(Relation.Kind kind) {
        Bench one = related(kind, "s1");
        Bench two = related(kind, "s2");

        assertThat(only(two).rss().inside())
                .isGreaterThanOrEqualTo(only(one).rss().inside());
        assertThat(only(two).worstCase().inside())
                .isGreaterThanOrEqualTo(only(one).worstCase().inside());
        assertThat(only(one).subject()).startsWith("h2+h1-");
    }

    private static FeatureBudget only(Bench bench) {
        assertThat(bench.plan().place().budgets()).hasSize(1);
        return bench.plan().place().budgets().get(0);
    }

    private static Bench related(Relation.Kind kind, String second) {
        Relation relation = new Relation(kind, "h2", "h1", SmallShop.length("0.2 mm"));
        return PlaceCases.twoHoles(null, second)
                .with(job -> job.withPlan(job.plan().withRelations(java.util.List.of(relation))));
    }
}
