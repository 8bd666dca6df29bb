package org.fizzhull.cli.making;

import java.io.PrintStream;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingOrder;
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
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;

/** {@code batch}: how much of what for that many pieces, in which mixes and order, and whether they hold and float. */
public final class BatchCommand implements Command {
    public static final String MIX_SIZE = "--mix-size";
    private static final int MOST = 100_000;

    @Override
    public String purpose() {
        return "what to weigh in for so many pieces, in how many mixes, in which order, at what cost?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull batch --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --pieces 48 --press firm",
            "fizzhull batch --recipe cli/src/doc/recipes/lemon.yaml --shape \"dome(diameter=80 mm)\" --pieces 20 --fill 135 g --mix-size 1 kg",
            "fizzhull batch --recipe cli/src/doc/recipes/lemon.yaml --shape \"cube(length=50 mm)\" --pieces 12 --press 30 kPa --cups metric --json",
            "fizzhull batch --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --pieces 48 --press firm --air 20 C, 60 % --chart plan.svg"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        QuestionOptions.addShape(spec);
        LoadOptions.add(spec);
        MakingOptions.add(spec);
        DryingOptions.add(spec);
        CommonOptions.value(spec, DryingOptions.PIECES, "N", "how many pieces are wanted; so many dry in the --room");
        MeasuredOptions.addTimes(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.value(spec, MIX_SIZE, "WEIGHT", "largest mix you want to handle, up to 2 kg (2 kg)");
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the page to pin to the wall");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Shape shape = QuestionOptions.shape(arguments);
        arguments.required(
                DryingOptions.PIECES, "a whole number from 1 to " + MOST, "Say how many pieces you want: --pieces 48.");
        int pieces = (int) arguments.whole(DryingOptions.PIECES, 1, 1, MOST);
        Recipe recipe = MakingOptions.required(arguments);
        Blend blend = Blend.of(recipe);
        Arguments drying = arguments.has(DryingOptions.ROOM) ? arguments : arguments.without(DryingOptions.PIECES);
        Sampling sampling = DrawOptions.sampling(arguments);
        Workers workers = DrawOptions.workers(arguments, sampling);
        Making making = MakingOptions.making(arguments, blend, shape, DryingPlan.none())
                .orElseThrow(() -> new Refusal(
                        "missing-option",
                        MakingOptions.FILL,
                        "",
                        "--fill 146 g or --press firm",
                        "Say how much damp mix goes into one mould, or how hard it is pressed."));
        Optional<WeighedPiece> weighed = WeighedOptions.weighed(arguments, () -> shape);
        Observations seen = MeasuredOptions.read(arguments, Question.of(shape, making));
        PressPredictor presses = DryingOptions.inAir(
                drying,
                PressPredictor.standard()
                        .with(QuestionOptions.factors(arguments, making))
                        .with(sampling)
                        .with(workers));
        PressForecast pressed = (weighed.isPresent() ? presses.with(weighed.get()) : presses).forecast(shape, making);
        PressForecast.PieceOut piece = pressed.piece().orElseThrow();
        double mixSize = arguments
                .value(MIX_SIZE, Allowed.above(0, Unit.GRAM)::parseExact)
                .orElse(Batch.LARGEST_MIX);
        Batch batch = Batch.plan(
                recipe,
                piece.dampMass().median(),
                pieces,
                pressed.workingTime(),
                mixSize,
                piece.feel().getOrDefault(Pressed.Feel.CRUMBLES, 0.0),
                MakingOptions.cups(arguments));
        Making bathed = making;
        Optional<DryForecast> dried = Optional.empty();
        if (DryingOptions.given(drying)) {
            DryPredictor dryer = DryPredictor.standard()
                    .with(QuestionOptions.factors(arguments, making))
                    .with(seen)
                    .with(sampling)
                    .with(workers);
            bathed = DryCommand.making(drying, blend, shape, dryer);
            dried = Optional.of(dryer.forecast(shape, bathed));
        }
        FloatPredictor floats = FloatPredictor.standard()
                .with(BenchOption.factors(arguments))
                .with(sampling)
                .with(workers)
                .with(seen);
        Forecast floating = floats.forecast(Question.of(shape, bathed).on(QuestionOptions.scale(arguments, bathed)));
        BatchPlan plan =
                new BatchPlan(recipe, shape, pieces, pressed, floating, batch, MixingOrder.of(recipe), dried, sampling);
        chart.ifPresent(file -> file.write(BatchPicture.of(plan)));
        // the picture is a whole sheet, which a page would say twice
        CommonOptions.end(arguments, new BatchText(plan), Optional.empty(), () -> RackDrawing.document(plan), out, err);
    }
}
