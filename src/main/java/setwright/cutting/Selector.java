package setwright.cutting;

import java.util.List;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.shop.Axis;
import setwright.shop.Machine;
import setwright.shop.ToolMaterial;

/** What a speed or a feed can be set to on a machine. Any unit, the same throughout. */
public sealed interface Selector {
    Kind kind();

    /** The nearest that can be set to what is wanted. */
    Chosen choose(Wanted wanted);

    /** A step pulley or gear box. */
    static Selector steps(List<Double> settings) {
        return new Steps(settings);
    }

    /** A variable drive. */
    static Selector stepless(double least, double greatest) {
        return new Stepless(least, greatest);
    }

    /** Wound by hand: no range. */
    static Selector byHand() {
        return new ByHand();
    }

    /** The spindle of a machine. */
    static Selector spindle(Machine machine) {
        Typed<SpindleSpeed> least = machine.speedLeast();
        Typed<SpindleSpeed> greatest = machine.speedGreatest();
        return least != null && greatest != null
                ? stepless(least.inside(), greatest.inside())
                : steps(machine.steps().stream().map(Typed::inside).toList());
    }

    /** The feed of a slide. */
    static Selector along(Axis axis) {
        Typed<Speed> least = axis.feedLeast();
        Typed<Speed> greatest = axis.feedGreatest();
        return least == null || greatest == null ? byHand() : stepless(least.inside(), greatest.inside());
    }

    /** How a setting is made. */
    enum Kind {
        STEPS,
        STEPLESS,
        BY_HAND
    }

    /**
     * What is wanted.
     *
     * @param value the setting that the material asks for
     * @param mostOver how many times as much may be set without harm: 1.25 for the speed of high-speed steel, 1.5 of
     *     carbide, 1 where more is never wanted
     * @param ceiling what must not be passed; infinite where there is none
     */
    record Wanted(double value, double mostOver, double ceiling) {
        /** Speed of a high-speed steel tool above which it is a caution. */
        public static final double HSS_MOST_OVER = 1.25;

        /** Speed of a carbide tool above which it is a caution. */
        public static final double CARBIDE_MOST_OVER = 1.5;

        public Wanted {
            if (!(value > 0 && mostOver >= 1 && ceiling > 0)) {
                throw new IllegalArgumentException(
                        "A wanted setting and its ceiling lie above 0 and it may be passed 1 time" + " or more, not "
                                + value + ", " + ceiling + " and " + mostOver + ".");
            }
        }

        /** How many times the wanted speed an edge stands. */
        public static double mostOver(ToolMaterial material) {
            return switch (material) {
                case HSS -> HSS_MOST_OVER;
                case CARBIDE -> CARBIDE_MOST_OVER;
            };
        }

        boolean allows(double setting) {
            return setting <= Math.min(value * mostOver, ceiling) * (1 + 1e-9);
        }
    }

    /**
     * What is set.
     *
     * @param value the setting
     * @param ofWanted setting over what is wanted
     * @param within whether it passes neither what may be set over the wanted nor the ceiling
     */
    record Chosen(double value, double ofWanted, boolean within) {}

    /** A list of settings, sorted. */
    record Steps(List<Double> settings) implements Selector {
        public Steps {
            settings = settings.stream().sorted().toList();
            if (settings.isEmpty() || settings.get(0) <= 0) {
                throw new IllegalArgumentException("Steps are at least one setting above 0, not " + settings + ".");
            }
        }

        @Override
        public Kind kind() {
            return Kind.STEPS;
        }

        /** The step nearest in ratio among those that are allowed; the lowest where none is. Of two as near, the lower. */
        @Override
        public Chosen choose(Wanted wanted) {
            double best = settings.get(0);
            for (double step : settings) {
                if (wanted.allows(step) && apart(step, wanted.value()) < apart(best, wanted.value())) {
                    best = step;
                }
            }
            return chosen(best, wanted);
        }

        private static double apart(double step, double wanted) {
            return Math.max(step / wanted, wanted / step);
        }
    }

    /** Anything between two ends. */
    record Stepless(double least, double greatest) implements Selector {
        public Stepless {
            if (!(least >= 0 && least <= greatest && greatest > 0)) {
                throw new IllegalArgumentException(
                        "A variable drive runs from its least to its greatest, not " + least + " to " + greatest + ".");
            }
        }

        @Override
        public Kind kind() {
            return Kind.STEPLESS;
        }

        @Override
        public Chosen choose(Wanted wanted) {
            double value = Math.min(wanted.value(), wanted.ceiling());
            return chosen(Math.min(Math.max(value, least), greatest), wanted);
        }
    }

    /** Whatever the hand does. */
    record ByHand() implements Selector {
        @Override
        public Kind kind() {
            return Kind.BY_HAND;
        }

        @Override
        public Chosen choose(Wanted wanted) {
            return chosen(Math.min(wanted.value(), wanted.ceiling()), wanted);
        }
    }

    private static Chosen chosen(double value, Wanted wanted) {
        return new Chosen(value, value / wanted.value(), wanted.allows(value));
    }
}
