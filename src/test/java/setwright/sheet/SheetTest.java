package setwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.drawing.Samples;
import setwright.plan.Plan;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

class SheetTest {
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);
    private static final Findings FINDINGS = new Findings(
            "Nothing found that stops this plan. 8 checks looked, 1 could not.",
            List.of("tool-springs: the reamer springs further than asked"),
            List.of("no-room-to-change-tool: table run aside (M. Lead: usual here)"),
            List.of("surface: needs the corner radius of the insert"),
            "3f9a 11c0");
    private static final Plan PLAN = Samples.plan();

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void no_line_of_the_sheet_is_longer_than_a_hundred_columns(UnitSystem units) {
        for (Plan plan : List.of(PLAN, Samples.on("readout-mill-r8"), Samples.bottomed(), Samples.onThickParallels())) {
            String text = TextSheet.text(SetUpSheet.of(plan, FINDINGS, new Printing(units)));
            assertThat(text.lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
            assertThat(text.lines()).allSatisfy(line -> assertThat(line).isEqualTo(line.stripTrailing()));
        }
    }

    @Test
    void the_sheet_names_every_operation_once_and_in_order() {
        List<String> heads = List.of(
                "Face to 38 high",
                "Spot for 12 H7 thru; 4x M8 thru",
                "Drill for 12 H7 thru",
                "Drill for 4x M8 thru",
                "Ream 12 H7 thru",
                "Tap 4x M8 thru");
        String text = sheet(PLAN);

        assertThat(text).containsSubsequence(heads);
        assertThat(heads)
                .allSatisfy(head -> assertThat(text.split(java.util.regex.Pattern.quote(head), -1))
                        .hasSize(2));
    }

    @Test
    void the_usual_cautions_come_first() {
        assertThat(sheet(PLAN).lines().skip(2).findFirst().orElseThrow())
                .contains("Guards in place, eye protection on");
    }

    @Test
    void the_sheet_never_says_that_all_is_well() {
        String text = (sheet(PLAN) + sheet(Samples.onThickParallels())).toLowerCase(Locale.ROOT);

        assertThat(text.split("[^a-z]+")).doesNotContain("safe", "ok", "approved", "valid", "guaranteed", "user");
        assertThat(text).doesNotContain("!");
    }

    @Test
    void title_block_findings_and_fingerprint_stand_on_the_sheet() {
        assertThat(sheet(PLAN))
                .contains("Bearing block, declination axis", "TM-104, revision B", "Mild steel", "number off  12")
                .contains("82 mm x 52 mm x 40 mm")
                .contains("Cautions open: 1", "tool-springs: the reamer springs further than asked")
                .contains("Cautions accepted: 1", "M. Lead: usual here")
                .contains("Not checked: 1", "surface: needs the corner radius of the insert")
                .contains("Fingerprint 3f9a 11c0");
    }

    @Test
    void the_holding_stands_with_its_figures() {
        assertThat(sheet(PLAN))
                .contains("6 in vise, jaws inboard", "the pair 1-1/4 in high, against the jaws")
                .contains("12.25 mm deep, 52 mm across")
                .contains("firm (counted as 15 kN)");
        assertThat(sheet(Samples.bottomed())).contains("the vise bed").doesNotContain("the pair");
    }

    @Test
    void what_is_still_in_pencil_is_said() {
        assertThat(sheet(Samples.withDrillOut("95")))
                .contains("in pencil: everything")
                .contains("in pencil: cutter, holder, depth, width, stock for the last pass, last pass, tool life,");
    }

    /**
     * Hole 2 is 13 right of the stop and 41 before the solid jaw. By hand: 13 / 25.4 = 0.51181 in = 2 turns of 0.200 and
     * 0.1118; 41 / 25.4 = 1.61417 in back = 8 whole turns back and 0.0142 further, where the dial reads 0.2 - 0.0142.
     */
    @Test
    void dials_are_given_in_turns_and_in_what_they_read() {
        assertThat(row(sheet(PLAN), "2"))
                .containsExactly("2", "2 turns, dial 0.1118 in", "8 turns back, dial 0.1858 in");
    }

    @Test
    void a_readout_is_given_signed_values_from_the_datum() {
        String text = sheet(Samples.on("readout-mill-r8"));

        assertThat(row(text, "2")).containsExactly("2", "+13.00 mm", "-41.00 mm");
        assertThat(row(text, "1")).containsExactly("1", "+41.00 mm", "-26.00 mm");
        assertThat(text).contains("Readout: ").doesNotContain("turns, dial");
    }

    @Test
    void a_sheet_of_one_set_up_has_no_other() {
        SetUpSheet none = SetUpSheet.ofSetUp(PLAN, "s9", FINDINGS, METRIC);
        SetUpSheet one = SetUpSheet.ofSetUp(PLAN, "s1", FINDINGS, METRIC);

        assertThat(TextSheet.text(none)).doesNotContain("Set-up s1");
        assertThat(TextSheet.text(one)).contains("Set-up s1");
    }

    /** The reamed hole is the first of the sheet; it stands on the part's middle line. */
    @Test
    void the_sheet_says_how_zero_is_found_and_found_again() {
        assertThat(sheet(PLAN).replaceAll("\\s+", " "))
                .contains("To find it: ")
                .contains("Zero lost: find it again as at first; once hole 1 is finished, sweep that: it stands at X ");
    }

    @Test
    void the_kit_lists_every_thing_once_under_its_place() {
        Kit kit = Kit.of(PLAN);

        assertThat(kit.shelves()).extracting(Kit.Shelf::place).isSorted().doesNotContain("on the knee mill");
        List<String> names = kit.shelves().stream()
                .flatMap(shelf -> shelf.items().stream())
                .map(Kit.Item::name)
                .toList();
        assertThat(names)
                .doesNotHaveDuplicates()
                .contains("Reamer 12 H7", "ER32 collet chuck, R8", "Parallels 1/8 in, 10 pairs: the pair 1-1/4 in high")
                .hasSize(10);
    }

    private static String sheet(Plan plan) {
        return TextSheet.text(SetUpSheet.of(plan, FINDINGS, METRIC));
    }

    /** The cells of the row of a hole. */
    private static List<String> row(String text, String hole) {
        return text.lines()
                .dropWhile(line -> !line.equals("Places of the holes"))
                .map(String::strip)
                .filter(line -> line.startsWith(hole + "  "))
                .map(line -> Arrays.asList(line.split(" {2,}")))
                .findFirst()
                .orElseThrow();
    }
}
