package org.fizzhull.cli.floating;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.attitude.LiesWords;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.shape.Shape;

/** The ways a piece rests in the water, ways that read the same taken together. */
public final class AttitudeText {
    /** A way that fewer random drops end in is left to the explanation, once another has been told. */
    private static final double RARE = 0.1;

    private AttitudeText() {}

    /** Where there is no attitude: why not. */
    public static String none(Forecast forecast) {
        if (forecast.question().shape().hull().isEmpty()) {
            return "which way up is not known for this shape";
        }
        return forecast.question().stillWater() ? "sinks" : "sinks as it is; only clinging gas can lift it";
    }

    static void rows(Forecast forecast, Table table) {
        Map<String, Double> ways = new LinkedHashMap<>();
        for (FloatingAttitude rest : forecast.attitudes()) {
            String way = way(forecast.question().shape(), rest);
            ways.put(way, ways.getOrDefault(way, 0.0) + rest.share().orElse(Double.NaN));
        }
        if (ways.isEmpty()) {
            table.row("sits", none(forecast));
        }
        boolean first = true;
        for (Map.Entry<String, Double> way : ways.entrySet()) {
            double share = way.getValue();
            if (!first && share < RARE) {
                continue;
            }
            String often = share < 0.995 ? ", " + NumberText.percent(share) + " of drops" : "";
            table.row(first ? "sits" : "or", way.getKey() + often);
            first = false;
        }
    }

    /** How it lies, how deep, and whether it stays so. */
    static String way(Shape shape, FloatingAttitude rest) {
        StringBuilder text = new StringBuilder(LiesWords.of(shape, rest));
        switch (rest.cavity()) {
            case DRY -> text.append(", the hollow dry");
            case FLOODED -> text.append(", flooded");
            case TRAPPED_GAS -> text.append(", gas under it");
            case NONE -> {}
        }
        text.append(", ").append(NumberText.millimetres(rest.draft())).append(" under, ");
        text.append(NumberText.millimetres(rest.freeboard()))
                .append(rest.cavity() == FloatingAttitude.Cavity.DRY ? " from water to rim" : " out");
        if (rest.rimDips().isPresent()) {
            text.append("; fills at a tilt of ")
                    .append(degrees(Math.toDegrees(rest.rimDips().getAsDouble())));
        }
        if (rest.turnsFreely()) {
            return text.append(shape.kind().equals("sphere") ? "" : "; turns freely")
                    .toString();
        }
        return text.append(rest.tippy() ? "; tippy" : "; steady").toString();
    }

    private static String degrees(double angle) {
        String whole = NumberText.whole(angle);
        return whole + (whole.equals("1") ? " degree" : " degrees");
    }
}
