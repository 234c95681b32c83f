package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.holding.Friction;
import setwright.holding.Outlook;
import setwright.holding.RingGrip;
import setwright.holding.ShankGrip;
import setwright.holding.ViseGrip;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.ColletBlock;
import setwright.shop.Mandrel;
import setwright.shop.Tailstock;
import setwright.shop.WorkChuck;

/** The balance of a part that is gripped round its axis: in a chuck, a collet, on a mandrel, between centres. */
record RoundBalance(String setUp, DrawnDevice device, SetUpStage stage, Rows rows) {
    /** A cone of 60 degrees presses half of its push along the axis on every newton across 0.866 (geometry). */
    private static final double CONE = Math.toRadians(30);

    private static final double DOG_ARM = 0.5;

    Optional<Balance> chuck() {
        return rows.row(device.gear().value(), WorkChuck.class).map(row -> {
            RingGrip ring = ring("chuck", row.jawDepth().inside(), row.jaws());
            Friction friction = JawFriction.ofWork(rows);
            return balance(
                    outlook -> {
                        double grip = outlook == Outlook.EXPECTED
                                ? row.grip().inside()
                                : row.gripLow().inside();
                        List<Contact> contacts = new ArrayList<>(ring.contacts(grip, friction.at(outlook)));
                        contacts.addAll(ring.seated(ViseGrip.PASSIVE_SHARE * friction.at(outlook)));
                        return contacts;
                    },
                    Given.of("grip of the chuck", row.grip().inside(), Unit.KN, at("gear")));
        });
    }

    /** What slips along slips round as well: the press is what gives that force at the friction of smooth jaws. */
    Optional<Balance> collet() {
        return rows.row(device.device().value(), ColletBlock.class).map(row -> {
            Band slips = row.collet().startsWith("ER") ? ShankGrip.colletChuck() : ShankGrip.r8Collet();
            RingGrip ring = ring("collet", row.length().inside() / 2, RingGrip.ALL_ROUND);
            return slipping(ring, slips.low(), slips.expected(), "collet");
        });
    }

    /** On the torque that it turns the part with, by half its bore. */
    Optional<Balance> mandrel() {
        return rows.row(device.gear().value(), Mandrel.class).map(row -> {
            double radius = row.least().inside() / 2;
            RingGrip ring = new RingGrip("mandrel", end(0), end(1), radius, RingGrip.ALL_ROUND, true);
            return slipping(
                    ring, row.torqueLow().inside() / radius, row.torque().inside() / radius, "mandrel");
        });
    }

    private Balance slipping(RingGrip ring, double low, double expected, String what) {
        Friction friction = Friction.SMOOTH_HARDENED_JAW;
        return balance(
                outlook -> ring.contacts(
                        (outlook == Outlook.EXPECTED ? expected : low) / friction.at(outlook), friction.at(outlook)),
                Given.of("slip of the " + what, expected, Unit.KN, at("gear")));
    }

    /** Two centres press along the axis; a dog at the left end takes the turning either way. */
    Optional<Balance> betweenCentres() {
        return rows.row(device.tail().value(), Tailstock.class).map(row -> {
            double press = row.press().inside();
            return balance(
                    outlook -> centres(press, outlook), Given.of("press of the centres", press, Unit.KN, at("tail")));
        });
    }

    private List<Contact> centres(double press, Outlook outlook) {
        double friction = Friction.SMOOTH_HARDENED_JAW.at(outlook);
        double asked = press * (outlook == Outlook.EXPECTED ? 1 : 0.7);
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Vector out = new Vector(0, StrictMath.cos(i * Math.PI / 2), StrictMath.sin(i * Math.PI / 2));
            Vector left = Vector.RIGHT.times(StrictMath.sin(CONE)).plus(out.times(StrictMath.cos(CONE)));
            Vector right = Vector.RIGHT.times(-StrictMath.sin(CONE)).plus(out.times(StrictMath.cos(CONE)));
            contacts.add(Contact.reacting("left centre", end(0).plus(out), left, friction));
            contacts.add(Contact.reacting("right centre", end(1).plus(out), right, friction)
                    .pressing(asked / StrictMath.sin(CONE) / 4, "tailstock"));
        }
        Vector dog = end(0).plus(Vector.UP.times(DOG_ARM * stage.heights().depth()));
        contacts.add(Contact.reacting("dog", dog, Vector.AWAY, 0));
        contacts.add(Contact.reacting("dog", dog, Vector.AWAY.times(-1), 0));
        return contacts;
    }

    private RingGrip ring(String name, double deep, int jaws) {
        Heights heights = stage.heights();
        Vector from = end(0);
        Vector to = device.upright() ? from.plus(Vector.RIGHT.times(deep)) : from.plus(Vector.UP.times(deep));
        return new RingGrip(name, from, to, heights.depth() / 2, jaws, false);
    }

    /** The middle of the part's end: at 0 where it is held, at 1 the free one. */
    private Vector end(double share) {
        Heights heights = stage.heights();
        double height = heights.startTop() - heights.partBottom();
        return device.upright()
                ? new Vector(share * heights.length(), heights.depth() / 2, height / 2)
                : new Vector(heights.length() / 2, heights.depth() / 2, share * height);
    }

    private Balance balance(java.util.function.Function<Outlook, List<Contact>> contacts, Value given) {
        Load weight = Balance.weight(stage, rows);
        return Balance.of(outlook -> new Grip(borne(contacts.apply(outlook), outlook), weight), given);
    }

    /** A tailstock's centre bears the free end from below and from both sides. */
    private List<Contact> borne(List<Contact> contacts, Outlook outlook) {
        if (device.fastening().value() == DeviceHolding.Fastening.BETWEEN_CENTRES
                || rows.row(device.tail().value(), Tailstock.class).isEmpty()) {
            return contacts;
        }
        List<Contact> all = new ArrayList<>(contacts);
        double friction = Friction.SMOOTH_HARDENED_JAW.at(outlook) / 2;
        for (Vector toward : List.of(Vector.UP, Vector.UP.times(-1), Vector.AWAY, Vector.AWAY.times(-1))) {
            all.add(Contact.reacting("tailstock", end(1), toward, friction));
        }
        all.add(Contact.reacting("tailstock", end(1), Vector.RIGHT.times(-1), friction));
        return all;
    }

    private String at(String key) {
        return setUp + "/holding/" + key;
    }
}
