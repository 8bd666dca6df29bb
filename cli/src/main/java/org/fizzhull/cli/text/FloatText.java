package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.BatchAim;
import org.fizzhull.forecast.Driver;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.IntoBath;
import org.fizzhull.forecast.Likelihood;
import org.fizzhull.forecast.Probability;
import org.fizzhull.forecast.Question;

/** A forecast in a maker's words: the answer, why, what decides it, the caution. */
public record FloatText(Forecast forecast) implements Answer {
    private static final String CAUTION = "Floating is not a sign that a piece is dry or safe.";

    /** Drivers below this share are not worth a maker's time. */
    private static final double WORTH_NAMING = 0.05;

    private static final int MOST_DRIVERS = 4;

    /** Half of the last digit shown, kg. */
    private static final double LEAST_SHOWN = 0.05e-3;

    @Override
    public String brief() {
        return Table.paragraph(sentence(forecast)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder();
        out.append(Table.paragraph(sentence(forecast))).append('\n').append(table(forecast));
        out.append('\n');
        for (Notice notice : forecast.notices()) {
            out.append(Table.paragraph("Note: " + notice.text()));
        }
        return out.append(Table.paragraph("Caution: " + CAUTION)).toString();
    }

    @Override
    public String behind() {
        return ExplainText.of(forecast);
    }

    @Override
    public List<Notice> json(OutputStream out) {
        FloatJson.write(out, forecast);
        return forecast.notices();
    }

    /** One plain sentence. */
    public static String sentence(Forecast forecast) {
        Question question = forecast.question();
        String piece = Say.grams(forecast.piece().mass()) + " in " + ShapeWords.piece(question.shape());
        String room = room(forecast);
        Optional<Probability> known = forecast.probability();
        if (known.isEmpty()) {
            String verdict = forecast.spareAtDrop().median() > 0 ? "Floats" : "Sinks";
            return verdict + " by the central values: " + piece + room + '.';
        }
        double p = known.get().floatsAtOnce();
        String verdict = verdict(Likelihood.of(p).words());
        String batch = question.making().hand().isPresent()
                ? "of 100 pieces of this batch " + Say.ofHundred(p) + " float at once"
                : "of 100 pieces like this " + Say.ofHundred(p) + " float at once";
        return verdict + ": " + piece + room + "; " + batch + sinking(forecast, known.get()) + '.';
    }

    /** Where half or more of the floaters sink again, the first sentence says so. */
    private static String sinking(Forecast forecast, Probability p) {
        double later = p.sinksLater().orElse(0);
        for (Notice notice : forecast.notices()) {
            if (notice.code().equals("inside-heavy") && later > 0) {
                return ", till the thing inside, heavier than water, takes the last of them down";
            }
        }
        return later < 0.5 * p.floatsAtOnce() || later == 0 ? "" : ", but " + Say.ofHundred(later) + " sink again";
    }

    private static String verdict(String likelihood) {
        return switch (likelihood) {
            case "virtually certain" -> "Virtually certain to float";
            case "very likely" -> "Very likely floats";
            case "likely" -> "Likely floats";
            case "about as likely as not" -> "About as likely to float as not";
            case "unlikely" -> "Unlikely to float at once";
            case "very unlikely" -> "Very unlikely to float at once";
            default -> "Exceptionally unlikely to float at once";
        };
    }

    private static String room(Forecast forecast) {
        boolean boat = boat(forecast);
        double limit = boat ? forecast.boatLimitMass().getAsDouble() : forecast.limitMass();
        double spare = limit - forecast.piece().mass();
        String name = boat ? "rim limit " : "float limit ";
        String left = Math.abs(spare) < LEAST_SHOWN
                ? "just at its limit"
                : spare >= 0 ? Say.grams(spare) + " to spare" : Say.grams(-spare) + " over";
        return ", " + name + Say.grams(limit) + ", so " + left;
    }

    private static boolean boat(Forecast forecast) {
        return forecast.boatLimitMass().isPresent() && forecast.question().into() == IntoBath.PLACED;
    }

    private static Table table(Forecast forecast) {
        Question question = forecast.question();
        Table table = new Table();
        String water = Say.celsius(question.bath().temperature()) + " water";
        table.row(
                "float limit",
                Say.grams(forecast.limitMass()) + " in " + water + ", without clinging gas" + loaded(question)
                        + flooded(question));
        if (forecast.boatLimitMass().isPresent()) {
            String limit = Say.grams(forecast.boatLimitMass().getAsDouble());
            table.row("rim limit", limit + ": heavier, and the rim goes under");
        }
        if (forecast.mass().isPresent() && forecast.probability().isPresent()) {
            Interval mass = forecast.mass().get();
            table.row(
                    "weight",
                    Say.grams(mass.median()) + " into the bath (from " + Say.grams(mass.low()) + " to "
                            + Say.grams(mass.high()) + ')');
        }
        String at = forecast.spareAtDrop().median() >= 0 ? "to spare at the drop" : "over at the drop";
        table.row(at, spare(forecast));
        if (forecast.aim().isPresent()) {
            BatchAim aim = forecast.aim().get();
            table.row("aim for", Say.grams(aim.aimFor()) + ": then 9 of 10 of this batch float");
            table.row("never above", Say.grams(aim.neverAbove()) + ": such a piece floats 9 times of 10");
        }
        RestText.rows(forecast, table);
        FateText.rows(forecast, table);
        MeasuredText.bathed(
                forecast.narrowing(), forecast.spareAtDrop(), forecast.probability(), forecast.fizzTime(), table);
        if (!forecast.drivers().isEmpty()) {
            table.row(
                    forecast.narrowing().isPresent() ? "what is left" : "what decides it", drivers(forecast.drivers()));
        }
        return table;
    }

    private static String loaded(Question question) {
        return question.shape() == question.shape().bare() ? "" : ", what it carries counted";
    }

    private static String flooded(Question question) {
        return question.shape().hollow().isPresent() ? ", the hollow full of water" : "";
    }

    private static String spare(Forecast forecast) {
        double median = forecast.spareAtDrop().median();
        boolean bare = forecast.question().stillWater() || (boat(forecast) && median > 0);
        String with = bare ? "" : ", clinging gas and soaking counted";
        String middle = Say.grams(Math.abs(median));
        if (forecast.probability().isEmpty()) {
            return middle + with;
        }
        return middle
                + " (from "
                + signed(forecast.spareAtDrop().low())
                + " to "
                + signed(forecast.spareAtDrop().high())
                + ")"
                + with;
    }

    static String signed(double kilograms) {
        return Say.grams(Math.abs(kilograms)) + (kilograms >= 0 ? " to spare" : " over");
    }

    private static String drivers(List<Driver> drivers) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(MOST_DRIVERS, drivers.size()); i++) {
            Driver driver = drivers.get(i);
            if (i > 0 && driver.share() < WORTH_NAMING) {
                break;
            }
            text.append(i > 0 ? ", " : "")
                    .append(driver.input().words())
                    .append(" (")
                    .append(Say.percent(Math.max(0, driver.share())))
                    .append(')');
        }
        return text.toString();
    }
}
