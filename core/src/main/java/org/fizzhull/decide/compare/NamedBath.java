package org.fizzhull.decide.compare;

import java.util.List;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Units;

/**
 * A bath of a panel: a piece that is sold goes into tubs that its maker never sees.
 *
 * @param kind name of the bath
 * @param bath the water
 */
public record NamedBath(Kind kind, Bath bath) {
    /**
     * Refuses what is missing.
     *
     * @param kind name of the bath
     * @param bath the water
     */
    public NamedBath {
        Given.all("kind, bath", kind, bath);
    }

    /** Names of the baths of {@link #homes}. */
    public enum Kind {
        /** Little water in a wide tub. */
        SHALLOW("shallow tub"),
        /** A tub filled to the brim. */
        DEEP("deep tub"),
        /** A bath for small children, or one that was left to stand. */
        COOL("cool bath"),
        /** As hot as people like it. */
        HOT("hot bath"),
        /** With bath salt stirred in. */
        SALTED("salted bath");

        /** Its name in results. */
        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** {@return the name in results} */
        public String words() {
            return words;
        }
    }

    /**
     * {@return the baths that buyers take at home (common practice, no source): 38 C and 15 cm in 70 L, 38 C and 45 cm in 200 L,
     * 32 C, 42 C, and 38 C with 500 g of salt; what is not named is that of a usual bath}
     */
    public static List<NamedBath> homes() {
        Bath usual = Bath.at(Units.celsius(38));
        return List.of(
                new NamedBath(Kind.SHALLOW, usual.withDepth(0.15).withVolume(0.070)),
                new NamedBath(Kind.DEEP, usual.withDepth(0.45).withVolume(0.200)),
                new NamedBath(Kind.COOL, usual.withTemperature(Units.celsius(32))),
                new NamedBath(Kind.HOT, usual.withTemperature(Units.celsius(42))),
                new NamedBath(Kind.SALTED, usual.withSalt(0.5)));
    }
}
