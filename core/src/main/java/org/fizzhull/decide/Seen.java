package org.fizzhull.decide;

import java.util.OptionalDouble;

/**
 * What a ruler and a scale say of the piece that went wrong.
 *
 * @param across its largest width, m
 * @param mass kg, as it went into the bath
 */
public record Seen(OptionalDouble across, OptionalDouble mass) {
    /** Refuses sizes and weights that are none. */
    public Seen {
        if (!(across.orElse(1) > 0 && mass.orElse(1) > 0)) {
            throw new IllegalArgumentException("across " + across + " m, mass " + mass + " kg: both above 0");
        }
    }

    /** Nothing was measured. */
    public static Seen nothing() {
        return new Seen(OptionalDouble.empty(), OptionalDouble.empty());
    }
}
