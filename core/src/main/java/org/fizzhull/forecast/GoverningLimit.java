package org.fizzhull.forecast;

import java.io.Serializable;

/**
 * The one limit that decides in still water whether a piece stays up, without gas: of a hollow set down open side up
 * the mass at which its rim goes under, of everything else the mass that its hull displaces, the hollow full of water.
 *
 * @param kind which limit it is
 * @param mass kg, what lies on the piece and in it counted
 * @param spare limit less the piece's mass, kg; negative for a piece that is over
 * @see Forecast#limit
 */
public record GoverningLimit(Kind kind, double mass, double spare) implements Serializable {
    /** Which limit it is. */
    public enum Kind {
        /** What the hull displaces. */
        PLAIN("plain"),
        /** A boat: heavier, and its rim goes under. */
        BOAT("boat");

        /** Key in results, stable. */
        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** {@return the word of results} */
        public String word() {
            return word;
        }
    }
}
