package org.fizzhull.cli.drying;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Decimals;

/** Long times and dates as a maker says them. */
public final class Days {
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    /** Below this hours say more than days, s. */
    private static final double IN_HOURS = 1.5 * DAY;

    private static final String[] WEEK = {"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"};

    private Days() {}

    /** A time from s: hours up to a day and a half, then days. */
    public static String text(double seconds) {
        boolean hours = seconds < IN_HOURS;
        String number = number(seconds, hours);
        String unit = hours ? "hour" : "day";
        return number + NumberText.UNIT + (number.equals("1") ? unit : unit + 's');
    }

    /** An uncertain time: {@code 2.5 days (between 2 and 4)}; where a share never ends, the soonest instead. */
    public static String text(Interval time, double never) {
        boolean hours = time.median() < IN_HOURS;
        if (time.low() == time.high()) {
            return text(time.median());
        }
        if (never > 0.025) {
            return text(time.median()) + " (" + text(time.low()) + " at the soonest; in " + NumberText.ofHundred(never)
                    + " of 100 cases not within 60 days)";
        }
        boolean mixed = hours && time.high() >= IN_HOURS;
        String low = mixed ? text(time.low()) : number(time.low(), hours);
        String high = mixed ? text(time.high()) : number(time.high(), hours);
        return text(time.median()) + " (between " + low + " and " + high + ')';
    }

    /** A day and its hour, to the nearest: {@code Thursday 2026-08-20, about 18:00}. */
    public static String date(LocalDateTime when) {
        LocalDateTime hour = when.plusMinutes(30).truncatedTo(ChronoUnit.HOURS);
        return WEEK[hour.getDayOfWeek().getValue() - 1] + ' ' + hour.toLocalDate() + ", about " + hour.toLocalTime();
    }

    private static String number(double seconds, boolean hours) {
        double value = seconds / (hours ? HOUR : DAY);
        return Decimals.text(hours || value >= 10 ? Math.rint(value) : Math.rint(10 * value) / 10, 6);
    }
}
