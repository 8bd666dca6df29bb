package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inGrams;

import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.Yield;
import org.fizzhull.forecast.Bathful;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.voyage.VoyageEvent;

/** How a piece fizzes as a maker reads it. */
public final class FizzText {
    private static final double LITRES = 1e3;
    private static final double LITRES_A_MINUTE = 60e3;
    private static final double SHOWN = 0.05e-3;
    private static final double MILDLY_SOUR = 6.5;
    private static final double SOUR = 5.5;
    private static final double ALKALINE = 8.8;

    private FizzText() {}

    /** The answer in a line. */
    public static String brief(FizzForecast forecast) {
        return Table.paragraph(sentence(forecast));
    }

    /** The whole answer. */
    public static String of(FizzForecast forecast) {
        double kelvin = forecast.question().bath().temperature();
        Table table = new Table()
                .row("at its liveliest", interval(forecast.peak().times(LITRES_A_MINUTE), "L of gas a minute"))
                .row(
                        "most gas",
                        Decimals.text(LITRES * forecast.yield().dryVolume(kelvin), 3) + Say.UNIT + "L if every grain"
                                + " reacts; part of it stays in the water")
                .row("runs out first", runsOut(forecast.yield().limiting()))
                .row("the bath after", water(forecast.open().ph()));
        MeasuredText.fizzed(forecast.narrowing(), forecast.fizzTime(), table);
        bathful(forecast.bathful(), table);
        table.row("its way", way(forecast));
        StringBuilder out = new StringBuilder(brief(forecast)).append(table);
        for (Notice notice : forecast.notices()) {
            out.append(Table.paragraph(notice.text()));
        }
        return out.append(Table.paragraph("Air the room: the gas is harmless in an aired bathroom, not in a small"
                        + " closed one. Never try a piece in a closed bottle. Rinse bleach and other cleaners away"
                        + " first: with acid, bleach gives chlorine."))
                .toString();
    }

    /** The numbers behind it. */
    public static String behind(FizzForecast forecast) {
        Table table = new Table();
        forecast.narrowing().ifPresent(known -> MeasuredText.behind(known, table));
        return table.row(
                        "carbon dioxide",
                        Decimals.text(forecast.yield().carbonDioxide(), 4) + Say.UNIT + "mol, "
                                + Say.grams(forecast.yield().gasMass()) + " at most")
                .row(
                        "pH",
                        Decimals.text(forecast.closed().ph(), 3) + " before any gas leaves, "
                                + Decimals.text(forecast.open().ph(), 3)
                                + " after hours in the room's air, in water without hardness of its own")
                .row("band", "95 of 100 voyages; the gas from 128 of the draws, each walked in full")
                .toString();
    }

    /** The first sentence. */
    public static String sentence(FizzForecast forecast) {
        Interval time = forecast.fizzTime();
        return forecast.blend().recipe().name() + ", "
                + ShapeWords.piece(forecast.question().shape()) + " of "
                + Say.grams(forecast.piece().mass()) + ", fizzes about " + FateText.duration(time.median())
                + (time.low() < time.high()
                        ? " (" + FateText.duration(time.low()) + " to " + FateText.duration(time.high()) + ")."
                        : ".");
    }

    private static String runsOut(Yield.Limiting limiting) {
        return switch (limiting) {
            case ACID -> "the acid; some bicarbonate is left in the bath";
            case BICARBONATE -> "the bicarbonate; some acid is left in the bath";
            case BALANCED -> "neither: acid and bicarbonate match";
        };
    }

    private static String water(double ph) {
        String word = ph < SOUR
                ? "sour"
                : ph < MILDLY_SOUR
                        ? "slightly sour"
                        : ph < ALKALINE ? "about neutral to slightly alkaline" : "alkaline";
        return word + "; depends on your tap";
    }

    private static void bathful(Bathful bath, Table table) {
        StringBuilder all = new StringBuilder();
        add(all, "oil", bath.oil());
        add(all, "foaming stuff", bath.surfactant());
        add(all, "emulsifier", bath.emulsifier());
        add(all, "fragrance", bath.fragrance());
        add(all, "salt", bath.salt());
        add(all, "colour", bath.colour());
        if (!all.isEmpty()) {
            table.row("in the bath", all.toString());
        }
        for (Bathful.OwnLimit limit : bath.limits()) {
            table.row(
                    "your limit",
                    limit.ingredient() + ' ' + Decimals.text(100 * limit.share(), 2) + Say.UNIT + "% of the piece, "
                            + (limit.kept() ? "within" : "ABOVE") + " your " + Decimals.text(100 * limit.limit(), 3)
                            + Say.UNIT + '%');
        }
    }

    private static void add(StringBuilder all, String what, double kilograms) {
        if (kilograms >= SHOWN) {
            all.append(all.isEmpty() ? "" : ", ")
                    .append(what)
                    .append(' ')
                    .append(Decimals.text(inGrams(kilograms), inGrams(kilograms) < 1 ? 1 : 2))
                    .append(Say.UNIT)
                    .append('g');
        }
    }

    private static String way(FizzForecast forecast) {
        StringBuilder way = new StringBuilder();
        for (VoyageEvent event : forecast.voyage().events()) {
            way.append(way.isEmpty() ? "" : ", ")
                    .append(event.kind().words())
                    .append(" after ")
                    .append(FateText.duration(event.time()));
        }
        return way.append(" (middle case)").toString();
    }

    private static String interval(Interval x, String unit) {
        return "about " + Decimals.text(x.median(), 2) + Say.UNIT + unit
                + (x.low() < x.high()
                        ? " (" + Decimals.text(x.low(), 2) + " to " + Decimals.text(x.high(), 2) + ")"
                        : "");
    }
}
