package org.fizzhull.cli.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.picture.FizzPicture;
import org.fizzhull.cli.text.FizzJson;
import org.fizzhull.cli.text.FizzText;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.Observations;
import org.fizzhull.forecast.Question;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.forecast.Weighed;
import org.fizzhull.quantity.Refusal;

/** {@code fizz}: how fast and how long does this piece fizz, and what does its bath become? */
final class FizzCommand implements Command {
    @Override
    public String purpose() {
        return "how fast and how long does this piece fizz, and what does the bath become?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull fizz --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --mass 138 g",
            "fizzhull fizz --recipe cli/src/doc/recipes/lemon.yaml --shape \"dome(diameter=80 mm)\" --mass 128 g --bath 36 C --chart fizz.svg"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.add(spec);
        MeasuredOptions.addTimes(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the picture: gas against time");
        return spec;
    }

    @Override
    public List<String> repeatable() {
        return List.of(MakingOptions.CHANGE);
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        MakingOptions.required(arguments);
        Question question = QuestionOptions.read(arguments);
        if (question.stillWater()) {
            throw new Refusal("conflict", "--no-fizz", "fizz without fizz", "no such option here", "Leave it away.");
        }
        if (!(question.making() instanceof Weighed)) {
            throw new Refusal(
                    "missing-option",
                    "--mass",
                    "",
                    "a weight as the piece goes into the bath, such as --mass 138 g",
                    "Leave --fill and --press away and weigh the piece; float tells the weight of a pressed one.");
        }
        Sampling sampling = DrawOptions.sampling(arguments);
        Observations seen = MeasuredOptions.read(arguments, question);
        FizzPredictor predictor =
                FizzPredictor.standard().with(sampling).with(DrawOptions.workers(arguments, sampling));
        FizzForecast forecast;
        try {
            forecast = predictor.with(seen).forecast(question);
        } catch (Refusal refusal) {
            throw MeasuredOptions.underItsOption(arguments, refusal);
        }
        chart.ifPresent(file -> file.write(FizzPicture.of(forecast)));
        if (arguments.has(CommonOptions.JSON)) {
            FizzJson.write(out, forecast);
            CommonOptions.tell(arguments, forecast.notices(), err);
        } else {
            out.print(arguments.has(CommonOptions.QUIET) ? FizzText.brief(forecast) : FizzText.of(forecast));
            if (arguments.has(CommonOptions.EXPLAIN)) {
                out.print(FizzText.behind(forecast));
            }
        }
    }
}
