package org.fizzhull.voyage.result;

import java.io.Serializable;

/**
 * Something that happened to a piece in a {@link FullVoyage}: the ends of its legs, and its coming up and going down.
 *
 * @param kind what happened
 * @param time s after it was let go
 */
public record VoyageEvent(Kind kind, double time) implements Serializable {
    /** What can happen. */
    public enum Kind {
        /** It came to rest on the bottom. */
        BOTTOM("reaches the bottom"),
        /** Its lift overcame its weight. */
        LIFT_OFF("lifts off"),
        /** It broke the surface after it had been under. */
        SURFACES("comes to the surface"),
        /** It went under after it had been at the surface. */
        SINKS("goes under"),
        /** It lies still at the surface. */
        SETTLES("lies still at the surface"),
        /** The rim of a dry hollow went under. */
        SWAMPS("swamps"),
        /** The wall of a hollow was eaten through. */
        PIERCED("is eaten through"),
        /** 1 % of the body is left. */
        END("is gone");

        /** What people read, after "it". */
        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** {@return what happened in words that follow "it", {@code comes up} for example} */
        public String words() {
            return words;
        }
    }
}
