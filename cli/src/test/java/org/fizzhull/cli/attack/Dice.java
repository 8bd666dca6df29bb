package org.fizzhull.cli.attack;

import java.util.List;
import java.util.SplittableRandom;

/** Chance that depends on a seed and the number of a line only, so that each line can be thrown again by itself. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed, long line) {
        random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + line);
    }

    boolean once(int in) {
        return random.nextInt(in) == 0;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A number whose logarithm is uniform. */
    double spread(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    @SafeVarargs
    final <T> T of(T... values) {
        return values[random.nextInt(values.length)];
    }

    <T> T of(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}
