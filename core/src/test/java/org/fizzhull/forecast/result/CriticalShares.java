package org.fizzhull.forecast.result;

import java.util.Map;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;

/** Critical weights of 1,000 draws, of which only what the search met and the two aims are known. */
public record CriticalShares(double below, double bent, double above, OptionalDouble aim, OptionalDouble most)
        implements CriticalWeights {
    private static final int DRAWS = 1000;

    @Override
    public double share(Met what) {
        return Map.of(Met.BELOW_RANGE, below, Met.NOT_MONOTONE, bent, Met.ABOVE_RANGE, above)
                .getOrDefault(what, 0.0);
    }

    @Override
    public OptionalDouble aim(double chance) {
        return aim;
    }

    @Override
    public OptionalDouble single(double chance) {
        return most;
    }

    @Override
    public int draws() {
        return DRAWS;
    }

    @Override
    public int count(Met what) {
        return (int) Math.round(share(what) * DRAWS);
    }

    @Override
    public double[] toTheEnd() {
        throw new UnsupportedOperationException();
    }

    @Override
    public double[] atOnce() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Interval interval() {
        throw new UnsupportedOperationException();
    }

    @Override
    public double chanceAt(double weight) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double chanceAtOnce(double weight) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double heaviest(double chance) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double heaviestAtOnce(double chance) {
        throw new UnsupportedOperationException();
    }

    @Override
    public BatchShare batch() {
        throw new UnsupportedOperationException();
    }

    @Override
    public BatchShare batchAt(double entered) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double[] shares() {
        throw new UnsupportedOperationException();
    }

    @Override
    public double[] sharesAtOnce() {
        throw new UnsupportedOperationException();
    }
}
