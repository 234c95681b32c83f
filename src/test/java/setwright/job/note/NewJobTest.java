package setwright.job.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Title;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Refused;
import setwright.quantity.Reading;
import setwright.quantity.UnitSystem;
import setwright.shop.IsoGroup;
import setwright.shop.Material;
import setwright.shop.Shop;

class NewJobTest {
    private static final MachineAsItStands MACHINE = new MachineAsItStands("knee-mill-r8-9x49", List.of(), null);
    private static final Shop SHOP = Shop.of(List.of(
            material("aluminium-6061", "Aluminium 6061-T6", "6061"),
            material("mild-steel", "Mild steel", "1018"),
            material("brass", "Free-cutting brass", "C360"),
            material("unknown-steel", "Steel, kind not known", "unknown")));

    @Test
    void title_block_and_notes_make_a_job_with_everything_pencilled() {
        Job job = job(block("100x60x25", "6061"), "4x M6 thru\n76x36\nslot 12x8");
        assertThat(job.plan().material()).isEqualTo("aluminium-6061");
        assertThat(job.plan().numberOff()).isEqualTo(12);
        assertThat(job.plan().machine()).isEqualTo(MACHINE);
        assertThat(job.plan().features()).extracting(Feature::id).containsExactly("hole1", "slot1");
        assertThat(job.plan().setUps()).isEmpty();
        assertThat(job.record()).isEqualTo(JobRecord.EMPTY);
    }

    @Test
    void the_material_may_stand_behind_the_sizes_in_any_order_of_words() {
        assertThat(job(block("100x60x25 6061", ""), "").plan().material()).isEqualTo("aluminium-6061");
        assertThat(job(block("100x60x25", "6061-T6 aluminum"), "").plan().material())
                .isEqualTo("aluminium-6061");
        assertThat(job(block("100x60x25", "MILD STEEL"), "").plan().material()).isEqualTo("mild-steel");
    }

    @Test
    void a_material_that_nobody_knows_is_unknown_steel() {
        assertThat(job(block("100x60x25", ""), "").plan().material()).isEqualTo("unknown-steel");
    }

    @Test
    void a_material_that_the_shop_has_not_is_refused_with_near_names() {
        assertThat(NewJob.of(block("100x60x25", "6062"), "", SHOP))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.message())
                                .contains("\"6062\" is no material of this shop")
                                .contains("near are Aluminium 6061-T6 (6061)"));
    }

    @Test
    void a_refused_note_is_named_with_its_line() {
        assertThat(NewJob.of(block("100x60x25", "brass"), "#7 thru\nfoo", SHOP))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.message()).startsWith("Line 2, foo: \"foo\" at place 1"));
    }

    @Test
    void none_off_is_refused() {
        TitleBlock none = new TitleBlock(title(), "100x60x25", "", 0, UnitSystem.METRIC, MACHINE);
        assertThat(NewJob.of(none, "", SHOP)).isInstanceOf(Refused.class);
    }

    private static Job job(TitleBlock block, String notes) {
        NoteRead<Job> read = NewJob.of(block, notes, SHOP);
        assertThat(read).isInstanceOf(One.class);
        return ((One<Job>) read).value();
    }

    private static TitleBlock block(String blank, String material) {
        return new TitleBlock(title(), blank, material, 12, UnitSystem.METRIC, MACHINE);
    }

    private static Title title() {
        return new Title("Encoder mount", "OBS-131", "A");
    }

    private static Material material(String id, String name, String calledToo) {
        Reading read = new Reading(UnitSystem.METRIC);
        return new Material(
                id,
                name,
                List.of(calledToo),
                IsoGroup.P,
                read.stress("1350 N/mm2"),
                read.ratio("0.21"),
                read.ratio("24000"),
                null,
                read.stress("2300 N/mm2"),
                read.density("7850 kg/m3"),
                read.stress("207 GPa"),
                read.ratio("0.0000115"),
                null,
                null,
                "common practice");
    }
}
