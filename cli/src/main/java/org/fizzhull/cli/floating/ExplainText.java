package org.fizzhull.cli.floating;

import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Additives;

/** What stands behind a forecast: figures, the priors of the uncertain inputs, and where each is from. */
public final class ExplainText {
    private ExplainText() {}

    public static String of(Forecast forecast) {
        Question question = forecast.question();
        StringBuilder out = new StringBuilder("\nBehind it\n");
        Table figures = new Table();
        figures.row(
                "volume",
                Decimals.text(Units.inCubicCentimetres(question.shape().volume()), 6) + " cm3");
        figures.row(
                "surface",
                Decimals.text(Units.inSquareCentimetres(question.shape().surface()), 6) + " cm2");
        figures.row(
                "density",
                Decimals.text(Units.inGramsPerCubicCentimetre(forecast.piece().density()), 5) + " g/cm3");
        figures.row("float limit", FloatText.still(forecast));
        double water = question.bath().density();
        figures.row("water", Decimals.text(Units.inGramsPerCubicCentimetre(water), 6) + " g/cm3");
        if (!question.stillWater()) {
            figures.row("entering water", entering(forecast.gasPerEnteringWater()));
            if (question.making().mix().isPresent()) {
                figures.row(
                        "mix on the surface", surface(forecast.piece().makeup().additives()));
            }
        }
        for (FloatingAttitude rest : forecast.attitudes()) {
            figures.row(
                    "metacentric height",
                    Decimals.text(Units.inMillimetres(rest.gm()), 4) + NumberText.UNIT + "mm "
                            + AttitudeText.way(question.shape(), rest));
        }
        forecast.probability()
                .ifPresent(p -> figures.row("floats to the end", Decimals.text(p.floatsToTheEnd(), 4))
                        .row(
                                "floats at once",
                                Decimals.text(p.floatsAtOnce(), 4) + " +- " + Decimals.text(p.error(), 2)
                                        + " (one standard error, "
                                        + forecast.sampling().samples() + " draws, seed "
                                        + forecast.sampling().seed() + ')'));
        forecast.narrowing().ifPresent(known -> MeasuredText.behind(known, figures));
        out.append(figures)
                .append("\nUncertain inputs: prior, share of the spread ")
                .append(
                        forecast.narrowing().isPresent()
                                ? "that is left of the spare (first order; inputs now depend on one another), source\n"
                                : "of the spare (Sobol total), source\n");
        Table priors = new Table();
        boolean weak = false;
        for (Factor factor : forecast.factors().rows()) {
            Seen seen = factor.source().seen();
            weak |= seen == Seen.ASSUMED;
            priors.row(
                    factor.input().label(),
                    prior(factor) + "; " + share(forecast, factor.input())
                            + factor.source().citation() + " [" + seen.words() + ']');
        }
        out.append(priors);
        if (weak) {
            out.append('\n')
                    .append(Table.paragraph(
                            "Inputs marked assumed are weakly supported: their priors are wide on purpose,"
                                    + " and were set so that common practice is met."));
        }
        return out.toString();
    }

    /** The gas-per-entering-water number, a check that switches nothing. */
    public static String entering(double gas) {
        return "could set free " + Decimals.text(gas, 2) + " times its volume of gas; "
                + (gas > 1 ? "above 1 the gas can keep it out" : "below 1 it comes in")
                + " (a check, nothing is computed from it)";
    }

    /** What oil, foam and starch do to the fizzing surface, all assumed. */
    public static String surface(Additives mix) {
        FizzParameters plain = FizzParameters.standard();
        FizzParameters mixed = plain.in(mix);
        return "oil " + NumberText.percent(mix.oil()) + ", foaming stuff " + NumberText.percent(mix.surfactant())
                + ", starch "
                + NumberText.percent(mix.starch()) + " of the powder: fizzes at "
                + NumberText.percent(mixed.recession38() / plain.recession38()) + " of the speed without them, bubbles "
                + Decimals.text(Units.inMillimetres(mixed.bubbleDiameter()), 2) + NumberText.UNIT + "mm, clinging gas "
                + Decimals.text(mixed.layerRatio(), 2) + " times that [assumed]";
    }

    /** Median and 95 % of the prior, in the unit people read. */
    public static String prior(Factor factor) {
        Input input = factor.input();
        String unit = input.unit().isEmpty() ? "" : ' ' + input.unit();
        return number(input, factor.prior().median())
                + " ("
                + number(input, factor.prior().quantile(0.025))
                + " to "
                + number(input, factor.prior().quantile(0.975))
                + ')'
                + unit;
    }

    private static String number(Input input, double si) {
        return Decimals.text(input.inUnit(si), 3);
    }

    private static String share(Forecast forecast, Input input) {
        for (Forecast.Driver driver : forecast.drivers()) {
            if (driver.input() == input) {
                return Decimals.text(Math.max(0, driver.share()), 2) + "; ";
            }
        }
        return "";
    }
}
