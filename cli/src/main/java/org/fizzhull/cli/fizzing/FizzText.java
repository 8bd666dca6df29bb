package org.fizzhull.cli.fizzing;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.FizzAnswer;
import org.fizzhull.cli.floating.ExplainText;
import org.fizzhull.cli.floating.MeasuredText;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.FirstAnswer;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Yield;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.Shape;

/** How a piece fizzes as a maker reads it. */
public record FizzText(FizzForecast forecast) implements Answer {
    /** Nobody sees less gas than this, L/min. */
    private static final double LEAST_GAS = 0.01;

    private static final double LITRES = 1e3;
    private static final double LITRES_A_MINUTE = 60e3;
    private static final double SHOWN = 0.05e-3;
    private static final double MILDLY_SOUR = 6.5;
    private static final double SOUR = 5.5;
    private static final double ALKALINE = 8.8;

    private static final String AIR =
            "Air the room: the gas is harmless in an aired bathroom, not in a small closed one. Never try a piece in a closed"
                    + " bottle. Rinse bleach and other cleaners away first: with acid, bleach gives chlorine.";

    /** Oil and foam in a bath that a foot can feel, kg (assumed). */
    private static final double SLIPPERY = 1e-3;

    @Override
    public String brief() {
        return Table.paragraph(sentence(forecast)) + Table.paragraph("Caution: " + AIR);
    }

    @Override
    public String whole() {
        return first().whole();
    }

    @Override
    public String shown() {
        return first().text();
    }

    private FirstAnswer first() {
        double kelvin = forecast.question().bath().temperature();
        Table table = new Table();
        if (forecast.effervescence().fizzes()) {
            table.row("at its liveliest", gas(forecast.drawn().peak().times(LITRES_A_MINUTE)))
                    .row("runs out first", runsOut(forecast.gasYield().limiting()));
        }
        if (forecast.gasYield().carbonDioxide() > 0) {
            table.row(
                    "most gas",
                    Decimals.text(LITRES * forecast.gasYield().dryVolume(kelvin), 3) + NumberText.UNIT
                            + "L at most, dry at 1 atm; part stays in the water");
        }
        if (forecast.drawn().fizzLost().high() > 0) {
            table.row("fizz lost", NumberText.fizzLost(forecast.drawn().fizzLost()) + " before the bath");
        }
        table.row(
                "the bath after",
                water(forecast.bath().openPh())
                        + (forecast.question().bath().alkalinity() > 0
                                ? "; with the alkalinity of your tap"
                                : "; see --tap-alkalinity"));
        MeasuredText.fizzed(forecast.narrowing(), forecast.fizzTime(), table);
        bathful(forecast.bath().bathful(), table);
        if (forecast.effervescence().fizzes()) {
            table.row("in the tub", VoyageText.of(forecast.voyage()) + " (middle case)");
        }
        FizzForecast.BathLoad bath = forecast.bath().bathful();
        boolean slippery = bath.oil() + bath.surfactant() + bath.emulsifier() >= SLIPPERY;
        return FirstAnswer.of(
                Table.paragraph(sentence(forecast)) + '\n' + table,
                forecast.notices(),
                forecast.effervescence().notice(),
                (slippery
                                ? Table.paragraph(
                                        "Caution: Oil and foam make the tub slippery: step out with care and rinse it.")
                                : "")
                        + Table.paragraph("Caution: " + AIR));
    }

    @Override
    public String behind() {
        Table table = new Table();
        forecast.narrowing().ifPresent(known -> MeasuredText.behind(known, table));
        return "\nBehind it\n"
                + table.row(
                                "carbon dioxide",
                                Decimals.text(forecast.gasYield().carbonDioxide(), 4) + NumberText.UNIT + "mol, "
                                        + NumberText.grams(forecast.gasYield().gasMass()) + " at most")
                        .row(
                                "pH",
                                Decimals.text(forecast.bath().closedPh(), 3) + " before any gas leaves, "
                                        + Decimals.text(forecast.bath().openPh(), 3)
                                        + " after hours in the room's air, in water "
                                        + tap(forecast.question().bath()))
                        .row("entering water", ExplainText.entering(forecast.gasPerEnteringWater()))
                        .row(
                                "mix on the surface",
                                ExplainText.surface(forecast.piece().makeup().additives()))
                        .row("band", band(forecast.sampling().samples()));
    }

    @Override
    public AnswerBody body() {
        return new FizzAnswer(forecast);
    }

    @Override
    public List<Notice> aside() {
        return forecast.notices();
    }

    /** The first sentence; of a piece that does not fizz, or hardly, that and what it does instead. */
    public static String sentence(FizzForecast forecast) {
        Interval time = forecast.fizzTime();
        String piece = forecast.blend().recipe().name() + ", "
                + ShapeWords.piece(forecast.question().shape().bare()) + " of "
                + NumberText.grams(forecast.piece().mass(), forecast.piece().mass())
                + load(forecast.question().shape());
        Optional<Notice> first = forecast.effervescence().notice();
        if (first.isPresent()) {
            return first.get().text() + ' ' + piece + ", dissolves slowly.";
        }
        return piece + ", fizzes " + time(time) + '.';
    }

    /** A line for a picture whose title names mix and shape. */
    public static String caption(FizzForecast forecast) {
        String weight =
                NumberText.grams(forecast.piece().mass(), forecast.piece().mass());
        return switch (forecast.effervescence().degree()) {
            case FIZZES -> weight + "; fizzes " + time(forecast.fizzTime());
            case HARDLY -> weight + "; hardly fizzes and dissolves slowly";
            case NOT -> weight + "; does not fizz, dissolves slowly";
        };
    }

    private static String time(Interval time) {
        return "about " + OutcomeText.duration(time.median())
                + (time.low() < time.high()
                        ? " (" + OutcomeText.duration(time.low()) + " to " + OutcomeText.duration(time.high()) + ")"
                        : "");
    }

    private static String tap(Bath bath) {
        return bath.alkalinity() > 0
                ? "of " + Decimals.text(bath.alkalinity(), 3) + NumberText.UNIT + "mmol/L total alkalinity"
                : "without alkalinity of its own";
    }

    private static String band(int samples) {
        int walked = Math.min(FizzPredictor.GAS_DRAWS, samples);
        return walked == 0
                ? "none: the middle case alone, as no draws were asked for"
                : "95 of 100 voyages; the gas from " + walked + " of the " + samples + " draws, each walked in full";
    }

    private static String load(Shape shape) {
        return shape == shape.bare() ? "" : ' ' + ShapeWords.load(shape);
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
        return word;
    }

    private static void bathful(FizzForecast.BathLoad bath, Table table) {
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
        if (bath.limits().isEmpty() && bath.fragrance() >= SHOWN) {
            table.row("your limit", "none in the recipe; your supplier's sheet names it");
        }
        for (FizzForecast.BathLoad.OwnLimit limit : bath.limits()) {
            table.row(
                    "your limit",
                    limit.ingredient() + ' ' + Decimals.text(100 * limit.share(), 2) + NumberText.UNIT
                            + "% of the piece, "
                            + (limit.kept() ? "within" : "ABOVE") + " your " + Decimals.text(100 * limit.limit(), 3)
                            + NumberText.UNIT + '%');
        }
    }

    private static void add(StringBuilder all, String what, double kilograms) {
        if (kilograms >= SHOWN) {
            all.append(all.isEmpty() ? "" : ", ")
                    .append(what)
                    .append(' ')
                    .append(Decimals.text(inGrams(kilograms), inGrams(kilograms) < 1 ? 1 : 2))
                    .append(NumberText.UNIT)
                    .append('g');
        }
    }

    /** Litres of gas a minute. */
    private static String gas(Interval x) {
        String least = x.low() < LEAST_GAS ? "up to " : Decimals.text(x.low(), 2) + " to ";
        return "about " + litres(x.median()) + " of gas a minute, dry at 1 atm"
                + (x.low() < x.high() ? " (" + least + litres(x.high()) + ')' : "");
    }

    private static String litres(double amount) {
        return Decimals.text(amount, 2) + NumberText.UNIT + 'L';
    }
}
