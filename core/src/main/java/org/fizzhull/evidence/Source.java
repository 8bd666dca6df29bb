package org.fizzhull.evidence;

import java.io.Serializable;
import java.util.Objects;

/**
 * Where a number is from: a publication and place in it, or what stands for one. The marks are those of
 * docs/physics/README.md. Every prior and every value of the ingredient table has one. Immutable.
 *
 * @param key short citation key, unique
 * @param citation author, year, title or journal, place in it
 * @param seen how the source was met
 */
public record Source(String key, String citation, Seen seen) implements Serializable {
    /**
     * Refuses an empty key or citation.
     *
     * @param key short citation key, unique
     * @param citation author, year, title or journal, place in it
     * @param seen how the source was met
     * @throws IllegalArgumentException for such
     */
    public Source {
        Objects.requireNonNull(seen, "seen");
        if (key.isBlank() || citation.isBlank()) {
            throw new IllegalArgumentException(
                    "a source has a key and a citation: \"" + key + "\", \"" + citation + "\"");
        }
    }

    /** How a source was met. A test or a default says so beside the number. */
    public enum Seen {
        /** Opened in a public text. */
        SEEN("seen"),
        /** Seen quoted in a text or a public list. */
        SECOND_HAND("second-hand"),
        /** Recalled, not re-opened. */
        MEMORY("from memory"),
        /** Derived. */
        COMPUTED("computed"),
        /** A judgement; has a wide prior. */
        ASSUMED("assumed"),
        /** A fact of the trade. */
        COMMON_PRACTICE("common practice, no source");

        /** The mark as people read it. */
        private final String words;

        Seen(String words) {
            this.words = words;
        }

        /** {@return the words shown to people} */
        public String words() {
            return words;
        }
    }
}
