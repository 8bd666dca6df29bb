package org.fizzhull.cli.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.picture.PressPicture;
import org.fizzhull.cli.text.PressJson;
import org.fizzhull.cli.text.PressText;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryingPlan;
import org.fizzhull.forecast.Making;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.forecast.WeighedPiece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.Sphere;

/** {@code press}: what will this recipe weigh pressed this hard into this mould, and how much liquid does it take? */
final class PressCommand implements Command {
    private static final String SHAPE = "--shape";

    @Override
    public String purpose() {
        return "what will this recipe weigh in this mould, does it hold, how much liquid does it take?";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --shape \"sphere(diameter=65 mm)\" --press firm",
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --shape \"dome(diameter=80 mm)\" --fill 140 g",
            "fizzhull press --recipe cli/src/doc/recipes/lemon.yaml --change \"kaolin +20 g\" --shape \"cube(length=50 mm)\" --chart press.svg"
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CommonOptions.value(spec, SHAPE, "SHAPE", "form and size of the piece; fizzhull shapes lists them");
        MakingOptions.add(spec);
        MeasuredOptions.addWeighed(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE.svg", "writes the picture: weight against pressure");
        return spec;
    }

    @Override
    public List<String> repeatable() {
        return List.of(MakingOptions.CHANGE);
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Optional<Shape> named = arguments.has(SHAPE) ? Optional.of(QuestionOptions.shape(arguments)) : Optional.empty();
        Shape shape = named.orElseGet(() -> Sphere.ofDiameter(Units.millimetres(65)));
        Blend blend = Blend.of(MakingOptions.required(arguments));
        Optional<Making> making = MakingOptions.making(arguments, blend, shape, DryingPlan.none());
        if (named.isEmpty() && making.isPresent()) {
            arguments.required(SHAPE, "a shape with its size, such as \"sphere(diameter=65 mm)\"", "Name the mould.");
        }
        Sampling sampling = DrawOptions.sampling(arguments);
        PressPredictor predictor =
                PressPredictor.standard().with(sampling).with(DrawOptions.workers(arguments, sampling));
        Optional<WeighedPiece> weighed = MeasuredOptions.weighed(arguments);
        PressForecast forecast;
        try {
            PressPredictor knowing = weighed.isPresent() ? predictor.with(weighed.get()) : predictor;
            forecast = making.isPresent() ? knowing.forecast(shape, making.get()) : knowing.forecast(blend, shape);
        } catch (Refusal refusal) {
            throw MeasuredOptions.underItsOption(arguments, refusal);
        }
        chart.ifPresent(file -> file.write(PressPicture.of(forecast)));
        if (arguments.has(CommonOptions.JSON)) {
            List<Notice> notices = PressJson.write(out, forecast, named.isPresent());
            CommonOptions.tell(arguments, notices, err);
        } else {
            PressText text = new PressText(forecast, named.isPresent());
            out.print(arguments.has(CommonOptions.QUIET) ? text.brief() : text.whole());
            if (arguments.has(CommonOptions.EXPLAIN)) {
                out.print(text.behind());
            }
        }
    }
}
