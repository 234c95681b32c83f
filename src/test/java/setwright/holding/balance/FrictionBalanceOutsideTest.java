package setwright.holding.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import setwright.holding.Example;

/**
 * Examples from outside, each with its source in its row. Where a row gives the least clamp for a load, that clamp has to
 * bear the load exactly once.
 */
class FrictionBalanceOutsideTest {
    private static final String FILE = "friction-balance.csv";
    private static final Vector DOWN = Vector.UP.times(-1);

    @TestFactory
    Stream<DynamicTest> the_least_grip_of_a_vise_against_a_force_square_to_the_jaws_bears_it_once() {
        return Stream.of("FX-VISE-AWAY", "FX-VISE-TOWARD")
                .map(id -> DynamicTest.dynamicTest(id, () -> {
                    Example e = Example.of(FILE, id);
                    double away = id.endsWith("AWAY") ? 1 : -1;
                    Vector force = new Vector(0, away * e.input("P_N"), 0);
                    bearsOnce(e, vise(e.expected()), Load.force("", new Vector(50, 20, 60), force), 64, 1e-3);
                }));
    }

    @Test
    void the_least_grip_of_a_vise_against_a_force_along_the_jaws_bears_it_once() {
        Example low = Example.of(FILE, "FX-VISE-ALONG-LOW");
        Load load = Load.force("", new Vector(50, 20, 20), new Vector(500, 0, 0));

        bearsOnce(low, onFrictionlessParallels(vise(low.expected())), load, 64, 1e-3);
    }

    @TestFactory
    Stream<DynamicTest> the_least_grip_against_a_high_force_along_the_jaws_bears_it_once() {
        Load load = Load.force("", new Vector(50, 20, 60), new Vector(500, 0, 0));
        return Example.startingWith(FILE, "FX-VISE-ALONG-HIGH")
                .map(e -> DynamicTest.dynamicTest(
                        e.id(),
                        () -> bearsOnce(e, onFrictionlessParallels(vise(e.expected())), load, e.edges(), 1e-3)));
    }

    @TestFactory
    Stream<DynamicTest> the_least_grip_against_a_milling_force_at_the_end_bears_it_once() {
        Load load = Load.force("", new Vector(100, 20, 60), new Vector(400, 300, 150));
        return Example.startingWith(FILE, "FX-VISE-MILL")
                .map(e ->
                        DynamicTest.dynamicTest(e.id(), () -> bearsOnce(e, vise(e.expected()), load, e.edges(), 1e-3)));
    }

    @Test
    void sixteen_edges_ask_at_most_two_per_cent_more_than_round_cones() {
        Example sixteen = Example.of(FILE, "FX-VISE-ALONG-HIGH-k16");
        Load load = Load.force("", new Vector(50, 20, 60), new Vector(500, 0, 0));
        Grip grip = Grip.of(onFrictionlessParallels(vise(sixteen.expected())));

        double coarse = new FrictionBalance(grip, 16).answer(load).factor();
        double round = new FrictionBalance(grip, 720).answer(load).factor();

        assertThat(coarse).isBetween(0.98 * round, round);
    }

    /** Clamps press with exactly 1 and do not rub; what is under each rubs with at most 1. */
    @TestFactory
    Stream<DynamicTest> a_plate_under_three_clamps_slides_at_the_published_load() {
        return Example.startingWith(FILE, "FX-SAKURAI +")
                .map(e -> DynamicTest.dynamicTest(e.id(), () -> {
                    double angle = Math.toRadians(e.input("theta_deg"));
                    Vector force = new Vector(Math.cos(angle), Math.sin(angle), 0);
                    Load load = Load.force("", new Vector(e.input("px"), e.input("py"), 0), force);
                    e.holdsFor(new FrictionBalance(Grip.of(threeClamps()), 720)
                            .answer(load)
                            .factor());
                }));
    }

    @Test
    void a_plate_under_three_clamps_turns_at_the_published_moment() {
        Example e = Example.of(FILE, "FX-SAKURAI moment");

        Answer answer = new FrictionBalance(Grip.of(threeClamps()), 720)
                .answer(new Load("", Vector.ZERO, Vector.ZERO, Vector.UP));

        e.holdsFor(answer.factor());
        assertThat(((Answer.Holds) answer).motion().kind()).isEqualTo(Motion.Kind.TURNS);
    }

    @TestFactory
    Stream<DynamicTest> the_least_total_of_two_clamps_of_a_fixture_bears_its_load_once() {
        Load lift = Load.force("", new Vector(75, 50, 50), new Vector(0, 0, 200));
        Load milling = Load.force("", new Vector(75, 50, 50), new Vector(300, 200, 100));
        return Stream.concat(
                Example.startingWith(FILE, "FX-321-B-clampmu25")
                        .map(e -> DynamicTest.dynamicTest(e.id(), () -> fixtureBearsOnce(e, 0.25, lift))),
                Example.startingWith(FILE, "FX-321-C-clampmu0")
                        .map(e -> DynamicTest.dynamicTest(e.id(), () -> fixtureBearsOnce(e, 0, milling))));
    }

    @Test
    void two_fingers_hold_a_weight_between_them_once() {
        Example e = Example.of(FILE, "FX-GRASP-2");
        List<Contact> fingers = List.of(
                Contact.reacting("left", new Vector(-1, 0, 0), Vector.RIGHT, 0.1)
                        .pressing(e.expected()),
                Contact.reacting("right", new Vector(1, 0, 0), Vector.RIGHT.times(-1), 0.1));

        bearsOnce(e, fingers, Load.force("", Vector.ZERO, DOWN), 64, 1e-9);
    }

    @Test
    void a_block_under_a_strap_slides_and_tips_at_the_loads_of_the_examples() {
        Example slide = Example.of(FILE, "ST-BLOCK-CLAMP-SLIDE2");
        Example tip = Example.of(FILE, "ST-BLOCK-CLAMP-TIP");

        Answer slides = block(slide.expected(), 0.15, 0.15)
                .answer(Load.force("", new Vector(50, 50, 0), new Vector(800, 0, 0)));
        Answer tips = block(tip.expected(), 2, 0).answer(Load.force("", new Vector(50, 50, 60), new Vector(800, 0, 0)));

        assertThat(slides.factor()).isCloseTo(1, within(1e-3));
        assertThat(((Answer.Holds) slides).motion().kind()).isEqualTo(Motion.Kind.SLIDES);
        assertThat(tips.factor()).isCloseTo(1, within(1e-3));
        assertThat(((Answer.Holds) tips).motion().kind()).isEqualTo(Motion.Kind.TIPS);
    }

    private static FrictionBalance block(double clamp, double table, double tip) {
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Vector corner = new Vector(i % 2 * 100, i / 2 * 100, 0);
            contacts.add(Contact.reacting("table, corner " + i, corner, Vector.UP, table));
        }
        contacts.add(Contact.reacting("strap", new Vector(50, 50, 0), DOWN, tip).pressing(clamp));
        return new FrictionBalance(new Grip(contacts, Load.weight(30, new Vector(50, 50, 30))));
    }

    private static void fixtureBearsOnce(Example e, double clampFriction, Load load) {
        List<Contact> contacts = new ArrayList<>();
        for (Vector at : List.of(new Vector(25, 25, 0), new Vector(125, 25, 0), new Vector(75, 80, 0))) {
            contacts.add(Contact.reacting("base", at, Vector.UP, 0.25));
        }
        for (Vector at : List.of(new Vector(40, 0, 25), new Vector(110, 0, 25))) {
            contacts.add(Contact.reacting("side", at, Vector.AWAY, 0.25));
        }
        contacts.add(Contact.reacting("end", new Vector(0, 50, 25), Vector.RIGHT, 0.25));
        double half = e.expected() / 2;
        contacts.add(Contact.reacting("first clamp", new Vector(75, 100, 25), Vector.AWAY.times(-1), clampFriction)
                .pressing(half, "clamps"));
        contacts.add(Contact.reacting("second clamp", new Vector(150, 50, 25), Vector.RIGHT.times(-1), clampFriction)
                .pressing(half, "clamps"));
        Grip grip = new Grip(contacts, Load.weight(60, new Vector(75, 50, 25)));
        assertThat(new FrictionBalance(grip, e.edges()).answer(load).factor())
                .as("%s (%s)", e.id(), e.source())
                .isCloseTo(1, within(1e-3));
    }

    private static void bearsOnce(Example e, List<Contact> contacts, Load load, int edges, double tolerance) {
        Answer answer = new FrictionBalance(Grip.of(contacts), edges).answer(load);
        assertThat(answer.factor()).as("%s (%s)", e.id(), e.source()).isCloseTo(1, within(tolerance));
    }

    /** Corners at x 0 and 100, z 0 and 20, the solid jaw in front at y 0, the moving one behind at y 40. */
    private static List<Contact> vise(double grip) {
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Vector front = new Vector(i % 2 * 100, 0, i / 2 * 20);
            Vector back = new Vector(i % 2 * 100, 40, i / 2 * 20);
            contacts.add(Contact.reacting("solid jaw", front, Vector.AWAY, 0.2));
            contacts.add(Contact.reacting("moving jaw", back, Vector.AWAY.times(-1), 0.2)
                    .pressing(grip / 4, "moving jaw"));
        }
        return contacts;
    }

    private static List<Contact> onFrictionlessParallels(List<Contact> vise) {
        List<Contact> contacts = new ArrayList<>(vise);
        for (int i = 0; i < 4; i++) {
            contacts.add(Contact.reacting("parallels", new Vector(i % 2 * 100, i / 2 * 40, 0), Vector.UP, 0));
        }
        return contacts;
    }

    private static List<Contact> threeClamps() {
        List<Contact> contacts = new ArrayList<>();
        for (Vector at : List.of(new Vector(-2, -1, 0), new Vector(2, -1, 0), new Vector(0, 1, 0))) {
            contacts.add(Contact.reacting("clamp", at, DOWN, 0).pressing(1));
            contacts.add(Contact.reacting("table", at, Vector.UP, 1).pressing(1));
        }
        return contacts;
    }
}
