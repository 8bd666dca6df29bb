package org.fizzhull.cli.making;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.PressReport;
import org.fizzhull.cli.drying.DryCommand;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.DryingOptions;
import org.fizzhull.cli.option.LoadOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.cli.option.WeighedOptions;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Workers;

/** {@code press}: what will this recipe weigh pressed this hard into this mould, and how much liquid does it take? */
public final class PressCommand implements Command {
    @Override
    public String purpose() {
        return "what will this recipe weigh in this mould, does it hold, how much liquid does it take?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --press firm",
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --shape \"dome(diameter=80 mm)\" --fill 140 g",
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --change \"kaolin +20 g\" --shape \"cube(length=50 mm)\" --chart press.svg",
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --press firm --air 18 C, 70 %"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.addShape(spec);
        LoadOptions.addInside(spec);
        MakingOptions.add(spec);
        DryingOptions.add(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the picture: weight against pressure");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Optional<Shape> named = arguments.has(QuestionOptions.SHAPE) || arguments.has(LoadOptions.INSIDE)
                ? Optional.of(QuestionOptions.shape(arguments))
                : Optional.empty();
        Shape shape = named.orElseGet(() -> Sphere.ofDiameter(Units.millimetres(65)));
        Blend blend = Blend.of(MakingOptions.required(arguments));
        BenchOption.asked(arguments, List.of(shape.bare()));
        boolean dries = DryingOptions.given(arguments);
        Sampling sampling = DrawOptions.sampling(arguments);
        Workers workers = DrawOptions.workers(arguments, sampling);
        DryPredictor dryer = DryPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(sampling)
                .with(workers);
        Optional<Making> making = MakingOptions.making(arguments, blend, shape, DryingPlan.none());
        if (named.isEmpty() && making.isPresent()) {
            arguments.required(
                    QuestionOptions.SHAPE,
                    "a shape with its size, such as \"sphere(diameter=65 mm)\"",
                    "Name the mould.");
        }
        Optional<WeighedPiece> weighed = WeighedOptions.weighed(arguments, () -> QuestionOptions.shape(arguments));
        PressPredictor predictor = DryingOptions.inAir(
                arguments,
                PressPredictor.standard()
                        .with(BenchOption.factors(arguments))
                        .with(sampling)
                        .with(workers));
        if (making.isPresent()) {
            predictor = predictor.with(QuestionOptions.factors(arguments, making.get()));
        }
        PressPredictor knowing = weighed.isPresent() ? predictor.with(weighed.get()) : predictor;
        PressForecast forecast =
                making.isPresent() ? knowing.forecast(shape, making.get()) : knowing.forecast(blend, shape);
        Optional<DryForecast> dried = dries && making.isPresent()
                ? Optional.of(dryer.with(QuestionOptions.factors(arguments, making.get()))
                        .with(MeasuredOptions.read(arguments, Question.of(shape, making.get())))
                        .forecast(shape, DryCommand.making(arguments, blend, shape, dryer)))
                : Optional.empty();
        if (dries && making.isEmpty()) {
            DryingOptions.check(arguments, shape);
        }
        PressReport report = new PressReport(forecast, named.isPresent(), dried, dries);
        CommonOptions.end(arguments, new PressText(report), chart, () -> PressPicture.of(forecast), out, err);
    }
}
