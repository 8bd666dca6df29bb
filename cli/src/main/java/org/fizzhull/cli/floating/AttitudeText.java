package org.fizzhull.cli.floating;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.attitude.LiesWords;
import org.fizzhull.shape.Shape;

/** The ways a piece rests in the water, ways that read the same taken together. */
public final class AttitudeText {
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
            String often = share < 0.995 ? " (" + NumberText.percent(share) + " of random drops)" : "";
            table.row(first ? "sits" : "or", way.getKey() + often);
            first = false;
        }
    }

    private static String way(Shape shape, FloatingAttitude rest) {
        StringBuilder text = new StringBuilder(LiesWords.of(shape, rest));
        switch (rest.cavity()) {
            case DRY -> text.append(", the hollow dry");
            case FLOODED -> text.append(", the hollow full of water");
            case TRAPPED_GAS -> text.append(", gas under it");
            case NONE -> {}
        }
        text.append(", ").append(NumberText.millimetres(rest.draft())).append(" under water, ");
        text.append(NumberText.millimetres(rest.freeboard()))
                .append(rest.cavity() == FloatingAttitude.Cavity.DRY ? " from the water to the rim" : " above");
        if (rest.rimDips().isPresent()) {
            text.append("; it fills when its rim dips, at a tilt of ")
                    .append(NumberText.whole(Math.toDegrees(rest.rimDips().getAsDouble())))
                    .append(" degrees");
        }
        if (rest.turnsFreely()) {
            return text.append(shape.kind().equals("sphere") ? "" : "; turns freely")
                    .toString();
        }
        return text.append(rest.tippy() ? "; tippy" : "; steady").toString();
    }
}
