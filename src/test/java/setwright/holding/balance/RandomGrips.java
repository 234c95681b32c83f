package setwright.holding.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import setwright.holding.EndStop;
import setwright.holding.Friction;
import setwright.holding.GripAsked;
import setwright.holding.Held;
import setwright.holding.Jaws;
import setwright.holding.Outlook;
import setwright.holding.Packing;
import setwright.holding.ViseGrip;

/** Parts in vises, parts under straps and cuts on them, as a shop might have them. */
final class RandomGrips {
    private RandomGrips() {}

    static Grip vise(RandomGenerator random) {
        double height = random.nextDouble(10, 80);
        Held part = new Held(
                random.nextDouble(20, 250),
                random.nextDouble(10, 120),
                random.nextDouble(3, Math.min(height, 40)),
                random.nextDouble(-20, 20));
        Jaws jaws = Jaws.smooth(random.nextBoolean() ? 152 : 102);
        ViseGrip grip = ViseGrip.of(part, jaws, asked(random).usual(jaws.width()));
        if (random.nextInt(4) > 0) {
            grip = grip.on(Packing.parallels(part, 0));
        }
        if (random.nextInt(3) == 0) {
            EndStop.End end = random.nextBoolean() ? EndStop.End.LEFT : EndStop.End.RIGHT;
            double z = random.nextDouble(0, height);
            grip = grip.against(new EndStop(end, part.depth() / 2, z, Friction.GROUND_PARALLEL));
        }
        Outlook outlook = random.nextBoolean() ? Outlook.EXPECTED : Outlook.PESSIMISTIC;
        Vector middle = new Vector(part.length() / 2, part.depth() / 2, height / 2);
        double weight = 7.7e-5 * part.length() * part.depth() * height;
        return grip.grip(outlook, Load.weight(weight, middle));
    }

    private static GripAsked asked(RandomGenerator random) {
        GripAsked[] all = GripAsked.values();
        return all[random.nextInt(all.length)];
    }

    /** Two to four straps over supports on a table. */
    static Grip strapped(RandomGenerator random) {
        List<Contact> contacts = new ArrayList<>();
        int straps = random.nextInt(2, 5);
        double height = random.nextDouble(5, 80);
        for (int i = 0; i < straps; i++) {
            Vector toe = new Vector(random.nextDouble(0, 200), random.nextDouble(0, 100), height);
            double force = random.nextDouble(1000, 15000);
            contacts.add(Contact.reacting("strap " + (i + 1), toe, Vector.UP.times(-1), random.nextInt(2) * 0.1)
                    .pressing(force));
        }
        for (int i = 0; i < 4; i++) {
            Vector corner = new Vector(i % 2 * 200, i / 2 * 100, 0);
            contacts.add(Contact.reacting("table, corner " + (i + 1), corner, Vector.UP, 0.15));
        }
        return new Grip(contacts, Load.weight(20, new Vector(100, 50, height / 2)));
    }

    /** Cuts around a contour: the force turns and wanders. */
    static List<Load> cuts(RandomGenerator random, int count) {
        double size = StrictMath.exp(random.nextDouble(3, 8.5));
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Vector at = new Vector(random.nextDouble(0, 200), random.nextDouble(0, 100), random.nextDouble(10, 80));
            double angle = random.nextDouble(0, 2 * Math.PI);
            Vector force = new Vector(
                    size * StrictMath.cos(angle), size * StrictMath.sin(angle), size * random.nextDouble(-0.4, 0.4));
            Vector moment = Vector.UP.times(random.nextInt(2) * random.nextDouble(-20, 20) * size);
            loads.add(new Load("cut " + (i + 1), at, force, moment));
        }
        return loads;
    }

    /** A milling cut: the force as the cutter turns, at both ends and the middle of its path, fed either way. */
    static List<Load> turn(RandomGenerator random, int moments) {
        double size = StrictMath.exp(random.nextDouble(4, 8));
        double height = random.nextDouble(10, 80);
        List<Load> loads = new ArrayList<>();
        for (double along : List.of(0.0, 40.0, 80.0)) {
            for (int way : List.of(1, -1)) {
                for (int i = 0; i < moments; i++) {
                    double angle = Math.PI * (i + 0.5) / moments;
                    double chip = StrictMath.sin(angle);
                    Vector force = new Vector(
                            -way * size * (chip * StrictMath.cos(angle) + 0.3 * chip * chip),
                            -way * size * (chip * chip - 0.3 * chip * StrictMath.cos(angle)),
                            size * 0.2 * chip);
                    Vector moment = Vector.UP.times(-10 * size * chip);
                    loads.add(new Load("cut", new Vector(along, 25, height), force, moment));
                }
            }
        }
        return loads;
    }

    /** 20 stations along a path, 36 directions of the force at each: all that one milling operation asks. */
    static List<Load> operation(RandomGenerator random) {
        double size = StrictMath.exp(random.nextDouble(4, 8));
        double height = random.nextDouble(10, 80);
        List<Load> loads = new ArrayList<>();
        for (int station = 0; station < 20; station++) {
            Vector at = new Vector(10 + 8 * station, random.nextDouble(10, 60), height);
            for (int direction = 0; direction < 36; direction++) {
                double angle = direction * Math.PI / 18;
                Vector force = new Vector(
                        size * StrictMath.cos(angle),
                        size * StrictMath.sin(angle),
                        size * random.nextDouble(-0.3, 0.3));
                loads.add(new Load("cut", at, force, Vector.UP.times(-8 * size)));
            }
        }
        return loads;
    }

    /** Contacts on a small lattice, many in one place or line or plane, some without friction, some pressing for nothing. */
    static Grip awkward(RandomGenerator random) {
        double size = StrictMath.pow(10, random.nextInt(4) - 1);
        double force = StrictMath.pow(10, random.nextInt(7) - 2);
        List<Contact> contacts = new ArrayList<>();
        for (int i = random.nextInt(16); i >= 0; i--) {
            Vector at = new Vector(random.nextInt(3), random.nextInt(3), random.nextInt(2)).times(size);
            Contact contact = Contact.reacting("contact", at, axis(random), random.nextInt(3) * 0.2);
            contacts.add(
                    switch (random.nextInt(5)) {
                        case 0 -> contact.pressing(force * random.nextInt(3));
                        case 1 -> contact.pressing(force, "jaw");
                        default -> contact;
                    });
        }
        Load weight = Load.weight(force * 0.1 * random.nextInt(2), new Vector(size, size, size / 2));
        return new Grip(contacts, weight);
    }

    private static Vector axis(RandomGenerator random) {
        double sign = random.nextBoolean() ? 1 : -1;
        return switch (random.nextInt(10)) {
            case 0 -> new Vector(random.nextInt(3) - 1, random.nextInt(3) - 1, 2 * sign);
            case 1, 2, 3 -> Vector.RIGHT.times(sign);
            case 4, 5, 6 -> Vector.AWAY.times(sign);
            default -> Vector.UP.times(sign);
        };
    }
}
