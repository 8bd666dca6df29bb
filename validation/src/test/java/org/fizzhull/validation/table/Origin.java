package org.fizzhull.validation.table;

import java.util.Locale;

/** Who says so: where an expected value is from. Never from this library. */
enum Origin {
    /** A printed or released value. */
    PUBLISHED,
    /** Follows from a closed form or an identity. */
    ANALYTIC,
    /** Computed by a program that is not this library. */
    OTHER_PROGRAM,
    /** A fact of the trade. */
    COMMON_PRACTICE,
    /** Recalled, not re-opened. */
    FROM_MEMORY;

    /** As it stands in a table: {@code OTHER PROGRAM}. */
    String words() {
        return name().replace('_', ' ');
    }

    static Origin of(String words) {
        for (Origin origin : values()) {
            if (origin.words().equals(words)) {
                return origin;
            }
        }
        throw new IllegalArgumentException(String.format(Locale.ROOT, "unknown origin \"%s\"", words));
    }
}
