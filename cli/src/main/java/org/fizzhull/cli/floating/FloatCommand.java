package org.fizzhull.cli.floating;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.cli.text.HeldUnderDrawing;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;

/** {@code float}: will this shape at this weight float, which way up, how deep, how sure? */
public final class FloatCommand implements Command {
    @Override
    public String purpose() {
        return "will this shape at this weight float, which way up, how deep, how sure?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull float --shape \"sphere(diameter=65 mm)\" --mass 138 g",
            "fizzhull float --shape \"dome(diameter=80 mm)\" --mass 128 g +- 4 g --bath 36 C --chart dome.svg",
            "fizzhull float --shape \"bowl(diameter=90 mm, wall=15 mm)\" --density \"1.1 g/cm3\" --json",
            "fizzhull float --shape \"sphere(diameter=65 mm)\" --recipe cli/src/doc/recipes/lemon.yaml --fill 146 g +- 3 g",
            "fizzhull float --shape \"sphere(diameter=65 mm)\" --mass 142 g --measured-rise 95 s at 150 g",
        };
    }

    @Override
    public List<String> drawing() {
        return HeldUnderDrawing.LINES;
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.add(spec);
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE", "writes the water-line picture, .svg or .png");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Question question = QuestionOptions.read(arguments);
        Observations seen = MeasuredOptions.read(arguments, question);
        Sampling sampling = DrawOptions.sampling(arguments);
        FloatPredictor predictor = FloatPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(sampling)
                .with(DrawOptions.workers(arguments, sampling));
        Forecast forecast = predictor.with(seen).forecast(question);
        CommonOptions.end(
                arguments,
                new FloatText(forecast, arguments.typed("float")),
                chart,
                () -> WaterlinePicture.of(forecast),
                out,
                err);
    }
}
