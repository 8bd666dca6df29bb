package org.fizzhull.cli.drying;

import java.util.List;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;

/** What {@code press} and {@code batch} tell of drying; {@code dry} tells the rest. */
public final class DriedText {
    private static final double GRAMS = 1e3;

    private DriedText() {}

    /** When it is dry and what it then weighs: a label and a text each. */
    public static List<String[]> rows(DryForecast dried) {
        String room = " at " + NumberText.celsius(dried.open().air().temperature()) + " and "
                + NumberText.percent(dried.open().air().humidity());
        String ready = dried.ready()
                .map(time -> "after " + Days.text(time, 1 - dried.readyWithin(Double.MAX_VALUE)) + room)
                .orElse("not within 60 days" + room + "; fizzhull dry says what air would do");
        String weight =
                weight(dried.last()) + " after " + Days.text(dried.end()) + (dried.stored() ? " with the storage" : "");
        return List.of(new String[] {"dry", ready}, new String[] {"weight, dried", weight});
    }

    private static String weight(Interval mass) {
        return mass.low() == mass.high()
                ? NumberText.grams(mass.median())
                : NumberText.grams(mass.median()) + " (" + NumberText.whole(GRAMS * mass.low()) + " to "
                        + NumberText.whole(GRAMS * mass.high()) + NumberText.UNIT + "g)";
    }
}
