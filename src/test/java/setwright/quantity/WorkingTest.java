package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static setwright.quantity.Symbol.symbol;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.quantity.Working.Part;

class WorkingTest {
    private static final Source TEST = Source.of("computed in this test");
    private static final Formula SPEED = new Formula(
            "n = 1000 v / (π d)",
            symbol("n", "spindle speed", Unit.RPM, 1, 10_000),
            List.of(symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 1000), symbol("d", "diameter", Unit.MM, 1, 200)),
            a -> 2 * a[0] / a[1],
            TEST);
    private static final Formula FEED = new Formula(
            "vf = n fz z",
            symbol("vf", "table feed", Unit.MM_PER_MIN, 1, 10_000),
            List.of(
                    symbol("n", "spindle speed", Unit.RPM, 1, 10_000),
                    symbol("fz", "feed per tooth", Unit.MM_PER_TOOTH, 0.001, 1),
                    symbol("z", "teeth", Unit.NONE, 1, 20)),
            a -> a[0] / (2 * Math.PI) * a[1] * a[2],
            TEST);
    private static final Table CUTTING_SPEED =
            new Table("cutting speed", "shop table of cutting speeds", Unit.M_PER_MIN, Source.of("common practice"));
    private static final Procedure PEAK =
            new Procedure("peak force", List.of("turn the cutter", "take the largest"), Unit.N, TEST);

    private final Given diameter = Given.of("cutter diameter", 12, Unit.MM, "s1/o3/cutter");
    private final Given chip = Given.of("chip load", 0.0508, Unit.MM_PER_TOOTH, "s1/o3/feedPerTooth");
    private final Given teeth = Given.of("teeth", 4, Unit.NONE, "");
    private final Worked cutting = CUTTING_SPEED.of("mild steel, HSS", Unit.M_PER_MIN.toInside(25));
    private final Worked speed = SPEED.of(cutting, diameter);
    private final Worked feed = FEED.of(speed, chip, teeth);

    /** 1000 x 25 / (3.1416 x 12) = 663.1 and 663.1 x 0.0508 x 4 = 134.7, by hand. */
    @Test
    void a_working_reads_as_in_a_handbook() {
        Working working = Working.of(feed, new Printing(UnitSystem.METRIC));

        assertThat(working.text()).isEqualTo("""
                        table feed
                          vf = n fz z
                          vf = 663.1 · 0.0508 · 4
                          vf = 135 mm/min
                          n = 663.1 rev/min, spindle speed, worked out below
                          fz = 0.0508 mm/tooth, chip load: s1/o3/feedPerTooth
                          z = 4, teeth
                          source: computed in this test
                          spindle speed
                            n = 1000 v / (π d)
                            n = 1000 · 25 / (π · 12)
                            n = 663 rev/min
                            v = 25 m/min, cutting speed, worked out below
                            d = 12 mm, cutter diameter: s1/o3/cutter
                            source: computed in this test
                            cutting speed
                              shop table of cutting speeds
                              mild steel, HSS
                              cutting speed = 25 m/min
                              source: common practice
                        """);
    }

    @Test
    void inch_people_see_the_result_in_their_unit_too() {
        assertThat(Working.of(feed, new Printing(UnitSystem.INCH)).text())
                .contains(
                        "vf = 135 mm/min = 5.3 in/min\n",
                        "n = 663 rev/min\n",
                        "cutting speed = 25 m/min = 82 ft/min\n");
    }

    @Test
    void a_given_keeps_the_place_it_came_from() {
        assertThat(Working.of(feed, new Printing(UnitSystem.METRIC)).lines())
                .filteredOn(line -> !line.origin().isEmpty())
                .extracting(Working.Line::part, Working.Line::depth, Working.Line::origin)
                .containsExactly(tuple(Part.INPUT, 0, "s1/o3/feedPerTooth"), tuple(Part.INPUT, 1, "s1/o3/cutter"));
    }

    @Test
    void what_goes_in_twice_is_worked_out_once() {
        Worked again = SPEED.of(cutting, diameter);
        Working working =
                Working.of(PEAK.of(123.4, "peak at 90°", feed, speed, again, chip), new Printing(UnitSystem.METRIC));

        assertThat(working.lines())
                .filteredOn(line -> line.part() == Part.NAME)
                .extracting(Working.Line::text)
                .containsExactly("peak force", "table feed", "spindle speed", "cutting speed");
    }

    @Test
    void a_procedure_shows_its_steps_and_its_deciding_case() {
        Working working = Working.of(PEAK.of(123.4, "peak at 90°", chip), new Printing(UnitSystem.METRIC));

        assertThat(working.text()).startsWith("""
                        peak force
                          turn the cutter
                          take the largest
                          peak at 90°
                          peak force = 123 N
                          chip load = 0.0508 mm/tooth: s1/o3/feedPerTooth
                        """);
    }

    @Test
    void a_plain_number_on_the_way_keeps_the_digits_it_is_put_in_with() {
        Formula square = new Formula(
                "J = x^2",
                symbol("J", "web factor", Unit.NONE, 0, 1),
                List.of(symbol("x", "web", Unit.NONE, 0, 1)),
                a -> a[0] * a[0],
                TEST);
        Worked web = square.of(Given.of("web", 0.18, Unit.NONE, ""));
        Printing printing = new Printing(UnitSystem.METRIC);

        assertThat(Working.of(web, printing).text()).contains("J = 0.032\n");
        assertThat(Working.of(square.of(web), printing).text()).contains("x = 0.0324, web factor", "  J = 0.0324\n");
    }

    @Test
    void negative_numbers_and_functions_are_put_in_legibly() {
        Formula formula = new Formula(
                "h = -z sin φ + kc1.1^-2 √(z)",
                symbol("h", "height", Unit.MM, 0, 1),
                List.of(
                        symbol("z", "place", Unit.MM, -10, 10),
                        symbol("φ", "angle", Unit.DEG, 0, 90),
                        symbol("kc1.1", "constant", Unit.NONE, 1, 9)),
                a -> 0,
                TEST);
        Worked worked = formula.of(
                Given.of("place", -3, Unit.MM, ""),
                Given.of("angle", Math.PI / 6, Unit.DEG, ""),
                Given.of("constant", 2, Unit.NONE, ""));

        assertThat(Working.of(worked, new Printing(UnitSystem.METRIC)).text())
                .contains("h = -(-3) · sin 30° + 2^-2 · √((-3))\n");
    }
}
