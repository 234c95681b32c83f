package setwright.holding.balance;

import java.util.ArrayList;
import java.util.List;

/** How a grip gives way: the contact that gives first and the motion, read from the dual of a balance. */
record Giving(Contact first, Motion motion) {
    private static final double LOADED = 1e-6;
    private static final double CLEARLY = 1 + 1e-6;

    static Giving of(Grip grip, Cones cones, Solution solution) {
        double[] rates = solution.dual();
        Vector translation = new Vector(rates[0], rates[1], rates[2]);
        Vector rotation = new Vector(rates[3], rates[4], rates[5]).times(1 / cones.spread());
        Moving moving = most(moving(grip, cones, solution, translation, rotation));
        double scale = moving.by() > 0 ? 1 / moving.by() : 1;
        return new Giving(moving.contact(), Motion.of(translation.times(scale), rotation.times(scale), cones.spread()));
    }

    /** The contacts that rub under force with their slip; where none does, all of them with their speed. */
    private static List<Moving> moving(Grip grip, Cones cones, Solution solution, Vector translation, Vector rotation) {
        List<Moving> all = new ArrayList<>();
        List<Moving> slipping = new ArrayList<>();
        for (int i = 0; i < grip.contacts().size(); i++) {
            Contact contact = grip.contacts().get(i);
            Vector speed = translation.plus(rotation.cross(contact.at().minus(grip.centre())));
            Vector slip = speed.minus(contact.normal().times(speed.dot(contact.normal())));
            all.add(new Moving(contact, speed.length()));
            if (contact.friction() > 0 && force(cones, solution, i) > LOADED) {
                slipping.add(new Moving(contact, slip.length()));
            }
        }
        double least = LOADED * most(all).by();
        slipping.removeIf(moving -> moving.by() <= least);
        return slipping.isEmpty() ? all : slipping;
    }

    /** The first of those that move most; a difference of rounding is none. */
    private static Moving most(List<Moving> all) {
        Moving most = all.get(0);
        for (Moving moving : all) {
            most = moving.by() > most.by() * CLEARLY ? moving : most;
        }
        return most;
    }

    /** What presses on a contact, as a share of all that presses. */
    private static double force(Cones cones, Solution solution, int contact) {
        double sum = 0;
        for (int j = 0; j < cones.edges(); j++) {
            sum += solution.weights()[contact * cones.edges() + j];
        }
        return sum;
    }

    private record Moving(Contact contact, double by) {}
}
