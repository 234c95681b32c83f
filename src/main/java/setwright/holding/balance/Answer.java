package setwright.holding.balance;

/** What a friction balance finds; never without the certificate that proves it. */
public sealed interface Answer {
    /** From here on a factor is not told apart: the question is settled. */
    double BEYOND = 99;

    Kind kind();

    /** How many times the load the grip bears: 99 stands for 99 or more, 0 for no balance even without the load. */
    double factor();

    Certificate certificate();

    /** The finding in words. */
    String words();

    /** The findings there are. */
    enum Kind {
        HOLDS,
        BEYOND_ASKED,
        DOES_NOT_STAND
    }

    /**
     * Up to this factor there is a balance.
     *
     * @param load the one that governs
     * @param firstToGive the loaded contact that slips most as the grip gives way
     */
    record Holds(double factor, Load load, Contact firstToGive, Motion motion, Certificate certificate)
            implements Answer {
        @Override
        public Kind kind() {
            return Kind.HOLDS;
        }

        @Override
        public String words() {
            String under = load.name().isEmpty() ? "" : " under " + load.name();
            return motion.kind().word() + under + "; " + firstToGive.name() + " gives first";
        }
    }

    /** There is a balance at any factor that is asked for. */
    record BeyondAsked(Certificate certificate) implements Answer {
        @Override
        public Kind kind() {
            return Kind.BEYOND_ASKED;
        }

        @Override
        public double factor() {
            return BEYOND;
        }

        @Override
        public String words() {
            return "holds at 99 times the load or more";
        }
    }

    /** There is no balance even without the load: what presses pushes the part away, or its weight does. */
    record DoesNotStand(Contact firstToGive, Motion motion, Certificate certificate) implements Answer {
        @Override
        public Kind kind() {
            return Kind.DOES_NOT_STAND;
        }

        @Override
        public double factor() {
            return 0;
        }

        @Override
        public String words() {
            return motion.kind().word() + " even without the load; " + firstToGive.name() + " gives first";
        }
    }
}
