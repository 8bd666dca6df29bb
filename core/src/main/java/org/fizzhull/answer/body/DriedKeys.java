package org.fizzhull.answer.body;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;

/**
 * What {@code press} and {@code batch} tell of drying: the keys {@code dried_mass_g} and {@code ready_after_h}, the same as
 * the last mass and the time of {@code dry}.
 */
final class DriedKeys {
    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;
    /** Seconds in an hour. */
    private static final double HOUR = 3600;

    /** Notice of an object whose time is null. */
    static final Notice NOT_READY = new Notice("not-ready", "ready_after_h is null: it is not dry within 60 days.");

    private DriedKeys() {}

    /** Writes the two keys; null without drying, and a null time where it is not dry within 60 days. */
    static void write(AnswerWriter to, Optional<DryForecast> dried) {
        to.interval("dried_mass_g", dried.map(DryForecast::last), GRAMS)
                .interval("ready_after_h", dried.flatMap(DryForecast::ready), 1 / HOUR);
    }

    /** Adds the notices of drying, but for remarks and what was said before. */
    static void addNotices(List<Notice> notices, DryForecast dried) {
        Notice.addNew(
                notices,
                dried.notices().stream()
                        .filter(notice -> notice.kind() != Notice.Kind.REMARK)
                        .toList());
    }
}
