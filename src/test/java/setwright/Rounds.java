package setwright;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * Repeats a random test. How often is said by {@code -Drounds}; what is drawn depends on the seed and the round only, and
 * both stand in the message of a failure.
 */
public final class Rounds {
    private static final int SAMPLE = 50;

    private Rounds() {}

    /** One round of a random test. */
    @FunctionalInterface
    public interface Round {
        void play(RandomGenerator random, int round) throws Exception;
    }

    /** How many rounds to play: {@code -Drounds}, or the given count where that is not set. */
    public static int count(int defaultCount) {
        return Integer.getInteger("rounds", defaultCount);
    }

    public static RandomGenerator random(long seed) {
        return new SplittableRandom(seed);
    }

    public static void each(long seed, Round round) {
        each(seed, count(SAMPLE), round);
    }

    public static void each(long seed, int count, Round round) {
        for (int i = 0; i < count; i++) {
            play(seed, i, round);
        }
    }

    /** Plays one round alone, as {@link #each} would: for looking into a failure. */
    public static void play(long seed, int i, Round round) {
        try {
            round.play(new SplittableRandom(seed ^ (0x9E3779B97F4A7C15L * i)), i);
        } catch (Exception | AssertionError failure) {
            throw new AssertionError("seed " + seed + ", round " + i + ": " + failure.getMessage(), failure);
        }
    }
}
