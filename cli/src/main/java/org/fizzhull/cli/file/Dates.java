package org.fizzhull.cli.file;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads a day and an hour as people write it: {@code 2026-08-14 18:30}. */
public final class Dates {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private Dates() {}

    /** The moment; empty where it is none or not in the years 1900 to 2199. */
    public static Optional<LocalDateTime> read(String text) {
        try {
            LocalDateTime when = LocalDateTime.parse(text.strip().replace(' ', 'T'));
            boolean near = when.getYear() >= FIRST_YEAR && when.getYear() <= LAST_YEAR;
            return near ? Optional.of(when) : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
