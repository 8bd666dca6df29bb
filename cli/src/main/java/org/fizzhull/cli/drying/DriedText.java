package org.fizzhull.cli.drying;

import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.Say;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;

/** What {@code press} and {@code batch} tell of drying; {@code dry} tells the rest. */
public final class DriedText {
    private static final double GRAMS = 1e3;
    private static final double HOUR = 3600;

    /** For an object in which the time is null. */
    public static final Notice NOT_READY =
            new Notice("not-ready", "ready_after_h is null: it is not dry within 60 days.");

    private DriedText() {}

    /** When it is dry and what it then weighs: a label and a text each. */
    public static List<String[]> rows(DryForecast dried) {
        String room = " at " + Say.celsius(dried.open().air().temperature()) + " and "
                + Say.percent(dried.open().air().humidity());
        String ready = dried.ready()
                .map(time -> "after " + Days.text(time, 1 - dried.readyWithin(Double.MAX_VALUE)) + room)
                .orElse("not within 60 days" + room + "; fizzhull dry says what air would do");
        String weight =
                weight(dried.last()) + " after " + Days.text(dried.end()) + (dried.stored() ? " with the storage" : "");
        return List.of(new String[] {"dry", ready}, new String[] {"weight, dried", weight});
    }

    /** Keys {@code dried_mass_g} and {@code ready_after_h}. */
    public static void json(Json json, Optional<DryForecast> dried) {
        interval(json, "dried_mass_g", dried.map(DryForecast::last), GRAMS);
        interval(json, "ready_after_h", dried.flatMap(DryForecast::ready), 1 / HOUR);
    }

    /** What of drying belongs to an answer, added to what was said before. */
    public static void addNotices(List<Notice> notices, DryForecast dried) {
        for (Notice notice : dried.notices()) {
            if (notice.kind() != Notice.Kind.REMARK && !notices.contains(notice)) {
                notices.add(notice);
            }
        }
    }

    /** Whether a notice is a caution, which stands last and is shown even when quiet. */
    public static boolean isCaution(Notice notice) {
        return notice.kind() == Notice.Kind.CAUTION;
    }

    /** Notes first, cautions behind. */
    public static String paragraphs(List<Notice> notices, boolean cautions) {
        StringBuilder out = new StringBuilder();
        for (Notice notice : notices) {
            boolean told = notice.kind() != Notice.Kind.REMARK;
            if (told && isCaution(notice) == cautions) {
                out.append(Table.paragraph((cautions ? "Caution: " : "Note: ") + notice.text()));
            }
        }
        return out.toString();
    }

    private static String weight(Interval mass) {
        return mass.low() == mass.high()
                ? Say.grams(mass.median())
                : Say.grams(mass.median()) + " (" + Say.whole(GRAMS * mass.low()) + " to "
                        + Say.whole(GRAMS * mass.high()) + ')';
    }

    private static void interval(Json json, String key, Optional<Interval> value, double factor) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(factor));
        } else {
            json.nothing(key);
        }
    }
}
