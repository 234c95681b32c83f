package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.caution.Bench;
import setwright.caution.SmallJobs;
import setwright.job.OperationField;
import setwright.job.Standing;
import setwright.job.ViseField;
import setwright.plan.Plan;

class EntriesTest {
    private static final Plan PLAN = Bench.of(SmallJobs.bearingBlock()).plan();

    @Test
    void every_value_has_an_address_of_its_own() {
        assertThat(Entries.of(PLAN)).extracting(Entry::address).doesNotHaveDuplicates();
    }

    @Test
    void every_plannable_field_is_there_with_its_standing() {
        for (OperationField<?> field : OperationField.all()) {
            assertThat(Entries.of(PLAN)).anySatisfy(entry -> {
                assertThat(entry.address()).isEqualTo("s1/h2-drill " + field.key());
                assertThat(entry.standing()).isEqualTo(Standing.PENCILLED);
            });
        }
        for (ViseField<?> field : ViseField.all()) {
            assertThat(Entries.of(PLAN))
                    .anySatisfy(entry -> assertThat(entry.address()).isEqualTo("s1/holding " + field.key()));
        }
    }

    @Test
    void no_record_is_left_as_the_text_of_a_record() {
        assertThat(Entries.of(PLAN)).extracting(Entry::text).noneMatch(text -> text.contains("["));
    }

    @Test
    void rows_in_use_stand_once_each() {
        assertThat(RowsInUse.of(PLAN))
                .doesNotHaveDuplicates()
                .extracting(row -> row.id())
                .contains("knee-mill-r8-9x49", "mild-steel", "vise-6in", "tap-hss-m8-spiral-point");
    }
}
