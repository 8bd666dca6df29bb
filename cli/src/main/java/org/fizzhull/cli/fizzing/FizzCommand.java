package org.fizzhull.cli.fizzing;

import java.io.PrintStream;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/** {@code fizz}: how fast and how long does this piece fizz, and what does its bath become? */
public final class FizzCommand implements Command {
    private static final String TAP_ALKALINITY = "--tap-alkalinity";

    private static final Allowed ALKALINITY = Allowed.between(0, 100, Unit.MILLIMOLE_PER_LITRE);

    @Override
    public String purpose() {
        return "how fast and how long does this piece fizz, and what does the bath become?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull fizz --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --mass 138 g",
            "fizzhull fizz --recipe cli/src/doc/recipes/lemon.yaml --shape \"dome(diameter=80 mm)\" --mass 128 g --bath 36 C --chart fizz.svg",
            "fizzhull fizz --recipe cli/src/doc/recipes/sea-foam.yaml --shape \"sphere(diameter=65 mm)\" --mass 150 g --tap-alkalinity \"3 mmol/L\" --explain",
            "fizzhull fizz --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --fill 146 g --air 21 C, 55 % --dry-for 3 d --stored 60 d"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.add(spec);
        CommonOptions.value(
                spec,
                TAP_ALKALINITY,
                "ALKALINITY",
                "total alkalinity of your tap water (ISO 9963-1), such as 2 mmol/L or 120 mg/L as CaCO3");
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the picture: gas against time");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        MakingOptions.required(arguments);
        Question question = hard(QuestionOptions.read(arguments), arguments);
        if (question.stillWater()) {
            throw new Refusal(
                    "conflict", QuestionOptions.NO_FIZZ, "fizz without fizz", "no such option here", "Leave it out.");
        }
        Sampling sampling = DrawOptions.sampling(arguments);
        Observations seen = MeasuredOptions.read(arguments, question);
        FizzPredictor predictor = FizzPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(sampling)
                .with(DrawOptions.workers(arguments, sampling));
        FizzForecast forecast = predictor.with(seen).forecast(question);
        CommonOptions.end(arguments, new FizzText(forecast), chart, () -> FizzPicture.of(forecast), out, err);
    }

    /** In the maker's tap water, where its alkalinity is given. */
    private static Question hard(Question question, Arguments arguments) {
        return arguments
                .value(TAP_ALKALINITY, ALKALINITY::parseExact)
                .map(alkalinity -> question.in(question.bath().withTapAlkalinity(alkalinity)))
                .orElse(question);
    }
}
