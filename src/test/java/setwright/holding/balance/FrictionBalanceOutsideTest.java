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

    /** The better the clamps share their total, the more both loads are borne; the best split bears the worse one once. */
    @TestFactory
    Stream<DynamicTest> the_least_total_of_two_clamps_under_two_loads_bears_the_worse_once() {
        List<Load> both = List.of(
                Load.force("", new Vector(75, 50, 50), new Vector(300, 200, 100)),
                Load.force("", new Vector(120, 80, 50), new Vector(-300, 200, 100)));
        return Example.startingWith(FILE, "FX-321-D")
                .map(e -> DynamicTest.dynamicTest(e.id(), () -> {
                    double friction = e.id().contains("clampmu25") ? 0.25 : 0;
                    assertThat(bestSplit(e, friction, both))
                            .as("%s (%s)", e.id(), e.source())
                            .isCloseTo(1, within(1e-3));
                }));
    }

    /** A split that bears the loads k times lies between two that do: the factor has one top, found by thirds. */
    private static double bestSplit(Example e, double friction, List<Load> loads) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double third = (high - low) / 3;
            double left = split(e, friction, low + third, loads);
            double right = split(e, friction, high - third, loads);
            if (left < right) {
                low += third;
            } else {
                high -= third;
            }
        }
        return split(e, friction, (low + high) / 2, loads);
    }

    private static double split(Example e, double friction, double share, List<Load> loads) {
        List<Contact> contacts = nest();
        contacts.add(Contact.reacting("first clamp", new Vector(75, 100, 25), Vector.AWAY.times(-1), friction)
                .pressing(share * e.expected()));
        contacts.add(Contact.reacting("second clamp", new Vector(150, 50, 25), Vector.RIGHT.times(-1), friction)
                .pressing((1 - share) * e.expected()));
        Grip grip = new Grip(contacts, Load.weight(60, new Vector(75, 50, 25)));
        return new FrictionBalance(grip, e.edges()).answer(loads).factor();
    }

    /** Six contacts in three vees a third of a turn apart, flanks at 45 degrees: what lifts one takes its share away. */
    @Test
    void a_kinematic_nest_bears_its_load_with_a_sixth_on_every_flank() {
        Example e = Example.of(FILE, "FX-KC-NEST");
        List<Contact> contacts = new ArrayList<>();
        for (int vee = 0; vee < 3; vee++) {
            double angle = vee * 2 * Math.PI / 3;
            Vector at = new Vector(50 * Math.cos(angle), 50 * Math.sin(angle), 0);
            Vector round = new Vector(-Math.sin(angle), Math.cos(angle), 0);
            for (int side : List.of(-1, 1)) {
                contacts.add(Contact.reacting("flank", at, round.times(side).plus(Vector.UP), 0));
            }
        }
        Load weight = Load.force("weight", Vector.ZERO, new Vector(0, 0, -100));
        Contact first = contacts.get(0);
        Load relief = Load.force("relief", first.at(), first.normal());
        e.holdsFor(
                new FrictionBalance(new Grip(contacts, weight)).answer(relief).factor());
    }

    @Test
    void a_plate_under_a_strap_in_its_middle_is_held_the_same_whichever_way_it_is_pushed() {
        Example e = Example.of(FILE, "FX-STRAP-DIAG");
        List<Contact> contacts = new ArrayList<>();
        contacts.add(Contact.reacting("strap", new Vector(0, 0, 10), DOWN, 0.2).pressing(e.expected()));
        contacts.add(Contact.reacting("table", Vector.ZERO, Vector.UP, 0.2));
        Load load = Load.force("", new Vector(0, 0, 5), new Vector(600, 600, 0));
        assertThat(new FrictionBalance(Grip.of(contacts), 720).answer(load).factor())
                .as("%s (two faces at 0.2)", e.source())
                .isCloseTo(1, within(1e-3));
    }

    /** Floor under the foot, smooth wall beside the head, its weight at 0.4 of its length. */
    @Test
    void a_ladder_stands_with_the_friction_of_the_example_and_slips_with_less() {
        Example friction = Example.of(FILE, "ST-LADDER-MU");
        Example wall = Example.of(FILE, "ST-LADDER-F");
        Load weight = Load.force("", onLadder(0.4), new Vector(0, 0, -200));
        assertThat(ladder(friction.expected() + 0.002, Load.NONE).answer(weight).kind())
                .isEqualTo(Answer.Kind.BEYOND_ASKED);
        assertThat(ladder(friction.expected() - 0.002, Load.NONE).answer(weight).factor())
                .isCloseTo(0, within(1e-9));
        Load offTheWall = Load.force("", onLadder(1), new Vector(-1, 0, 0));
        wall.holdsFor(ladder(1, weight).answer(offTheWall).factor());
    }

    private static FrictionBalance ladder(double friction, Load weight) {
        Contact foot = Contact.reacting("foot", Vector.ZERO, Vector.UP, friction);
        Contact head = Contact.reacting("head", onLadder(1), Vector.RIGHT.times(-1), 0);
        return new FrictionBalance(new Grip(List.of(foot, head), weight));
    }

    private static Vector onLadder(double share) {
        double angle = Math.toRadians(50);
        return new Vector(1000 * share * Math.cos(angle), 0, 1000 * share * Math.sin(angle));
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
        List<Contact> contacts = nest();
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

    /** Three contacts below, two at the side, one at the end. */
    private static List<Contact> nest() {
        List<Contact> contacts = new ArrayList<>();
        for (Vector at : List.of(new Vector(25, 25, 0), new Vector(125, 25, 0), new Vector(75, 80, 0))) {
            contacts.add(Contact.reacting("base", at, Vector.UP, 0.25));
        }
        for (Vector at : List.of(new Vector(40, 0, 25), new Vector(110, 0, 25))) {
            contacts.add(Contact.reacting("side", at, Vector.AWAY, 0.25));
        }
        contacts.add(Contact.reacting("end", new Vector(0, 50, 25), Vector.RIGHT, 0.25));
        return contacts;
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
