package org.fizzhull.cli.option;

import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.forecast.WaterLeft;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/** The options that make a question about one piece in one bath. */
public final class QuestionOptions {
    /** Several baths, in a comparison. */
    public static final String BATHS = "--baths";

    public static final String SHAPE = "--shape";
    public static final String MASS = "--mass";
    public static final String DENSITY = "--density";
    public static final String BATH = "--bath";
    public static final String BATH_SALT = "--bath-salt";
    private static final String INTO_BATH = "--into-bath";
    public static final String NO_FIZZ = "--no-fizz";
    public static final String MEASURED = "--measured";
    public static final String SCALE = "--scale";

    private static final Allowed ABOVE_ZERO = Allowed.above(0, Unit.GRAM);

    private QuestionOptions() {}

    public static void add(Options spec) {
        addShape(spec);
        addMaking(spec);
        CommonOptions.value(
                spec,
                MASS,
                "WEIGHT",
                "whole piece on the scale, such as 138 g or 138 g +- 4 g; of one batch 138 g, 141 g, 136 g");
    }

    /** The options of what a piece is made of and which bath it goes into, without its shape and weight. */
    public static void addMaking(Options spec) {
        LoadOptions.add(spec);
        CommonOptions.value(spec, DENSITY, "DENSITY", "instead of a weight, such as 0.95 g/cm3");
        MakingOptions.add(spec);
        DryingOptions.add(spec);
        CommonOptions.value(spec, BATH, "BATH", "such as 38 C, 35 cm, 150 L (these are the defaults)");
        CommonOptions.value(spec, BATH_SALT, "WEIGHT", "cooking salt stirred into the bath");
        CommonOptions.value(spec, INTO_BATH, "HOW", "placed or dropped (open shapes: placed, others: dropped)");
        CommonOptions.value(spec, MEASURED, "HOW", "how the size is known: nominal, ruler, calipers (default), water");
        CommonOptions.value(
                spec,
                SCALE,
                "STEP",
                "smallest difference your scale shows, such as 0.1 g (default: the last digit of the weight)");
        CommonOptions.flag(spec, NO_FIZZ, "still water: no fizz, no clinging gas; takes any body");
    }

    public static void addShape(Options spec) {
        CommonOptions.value(spec, SHAPE, "SHAPE", "form and size of the piece; fizzhull shapes lists them");
    }

    public static Shape shape(Arguments arguments) {
        return loaded(
                arguments,
                ShapeText.read(
                        arguments.required(
                                SHAPE,
                                "a shape with its size, such as \"sphere(diameter=65 mm)\"",
                                "Type fizzhull shapes for the list."),
                        new OpenedFiles(arguments.files())));
    }

    /** With what the options put on it and into it. */
    public static Shape loaded(Arguments arguments, Shape shape) {
        return arguments.has(LoadOptions.ON_TOP) || arguments.has(LoadOptions.INSIDE)
                ? LoadOptions.on(arguments, shape)
                : shape;
    }

    public static Question read(Arguments arguments) {
        return read(arguments, shape(arguments), MakingOptions.recipe(arguments).map(Blend::of));
    }

    /** The question about a shape of a mix, if one is known. */
    public static Question read(Arguments arguments, Shape shape, Optional<Blend> blend) {
        Making making = making(arguments, shape, blend);
        Bath bath = bath(arguments);
        Question.IntoBath usual = shape.hollow().isPresent() ? Question.IntoBath.PLACED : Question.IntoBath.DROPPED;
        return new Question(
                shape,
                making,
                bath,
                arguments
                        .word(INTO_BATH, Question.IntoBath.values(), Question.IntoBath::word, "placed or dropped")
                        .orElse(usual),
                arguments.has(NO_FIZZ),
                arguments
                        .word(MEASURED, Measured.values(), Measured::word, "nominal, ruler, calipers or water")
                        .orElse(Measured.CALIPERS),
                scale(arguments, making));
    }

    /**
     * The usual priors with the scale that a fill was weighed on: so that commands without a bath draw the same pieces as
     * those with one.
     */
    public static Factors factors(Arguments arguments, Making making) {
        Factors known = BenchOption.factors(arguments);
        if (!(making instanceof Moulded.Filled)) {
            return known;
        }
        Scale scale = scale(arguments, making);
        return known.with(scale.reading()).with(scale.offset());
    }

    /** The scale that was named, or one that shows as many digits as were typed. */
    public static Scale scale(Arguments arguments, Making making) {
        Optional<Double> step = arguments.value(SCALE, ABOVE_ZERO::parseExact);
        boolean weighed = making instanceof Making.Weighed || making instanceof Moulded.Filled;
        arguments.benchUse().passed(BenchFile.SCALE, step.isPresent() ? SCALE + " was typed" : "no weight counts here");
        if (step.isPresent()) {
            return new Scale(step.get());
        }
        Optional<Scale> bench = BenchOption.of(arguments).known().scale();
        if (bench.isPresent()) {
            if (weighed) {
                arguments.benchUse().counts(BenchFile.SCALE);
            }
            return bench.get();
        }
        if (making instanceof Making.Weighed piece) {
            return Scale.written(piece.mass(), step(arguments, MASS));
        }
        return making instanceof Moulded.Filled filled
                ? Scale.written(filled.dampMass(), step(arguments, MakingOptions.FILL))
                : Scale.usual(Double.NaN);
    }

    /** One of the last place of a weight as it was typed, kg; 0 where it was not typed. */
    private static double step(Arguments arguments, String option) {
        return arguments.value(option, WeightText::step).orElse(0.0);
    }

    /** Weighed, or made from a recipe by fill or by press. */
    private static Making making(Arguments arguments, Shape shape, Optional<Blend> blend) {
        boolean weighed = arguments.has(MASS) || arguments.has(DENSITY);
        boolean made = arguments.has(MakingOptions.FILL) || arguments.has(MakingOptions.PRESS);
        boolean weighedLater = DryingOptions.given(arguments) && !arguments.has(MakingOptions.PRESS);
        if (weighed && made && !weighedLater) {
            throw new Refusal(
                    "conflict",
                    MASS,
                    "a weight as it goes into the bath and a fill or press",
                    "one of --mass, --density, --fill, --press",
                    "A weighed piece needs no fill: keep the weight just before the bath.");
        }
        if (blend.isPresent() && made && !weighed) {
            DryingPlan plan = DryingOptions.plan(arguments, shape);
            return MakingOptions.making(arguments, blend.get(), shape, plan).orElseThrow();
        }
        if (blend.isPresent() && !weighed) {
            throw new Refusal(
                    "missing-option",
                    MakingOptions.FILL,
                    "",
                    "--fill 146 g, --press firm or --mass 138 g beside the recipe",
                    "Say how much goes into the mould, how hard it is pressed, or what the piece weighs.");
        }
        Amount mass = mass(arguments, shape);
        Optional<Piece.Makeup> dried = dried(arguments, shape, blend, mass);
        return new Making.Weighed(mass.value(), MakingOptions.around(mass), blend, dried);
    }

    /** What a weighed piece has become by drying; with its fill, the weighing says how much water is left. */
    private static Optional<Piece.Makeup> dried(Arguments arguments, Shape shape, Optional<Blend> blend, Amount mass) {
        if (!DryingOptions.given(arguments)) {
            return Optional.empty();
        }
        Blend mix = blend.orElseThrow(() -> new Refusal(
                "missing-option",
                MakingOptions.RECIPE,
                "drying options without a recipe",
                "a recipe file, such as --recipe lemon.yaml",
                "A weight alone has seen the drying already; with a recipe the water left is inferred."));
        DryingPlan plan = DryingOptions.plan(arguments, shape);
        return Optional.of(arguments
                .value(MakingOptions.FILL, ABOVE_ZERO::parseExact)
                .map(fill -> WaterLeft.of(shape, mix, fill, mass.value(), plan))
                .orElseGet(() -> WaterLeft.after(shape, mix, mass.value(), plan)));
    }

    /** Both ends of a range are pieces too, and asking of one refuses it: 100 to 300 g is no 65 mm ball. */
    private static Amount mass(Arguments arguments, Shape shape) {
        Amount mass = entered(arguments, shape);
        if (mass.spread() == Amount.Spread.RECTANGULAR) {
            for (double end : new double[] {mass.low(), mass.high()}) {
                if (arguments.has(NO_FIZZ)) {
                    Question.still(shape, end);
                } else {
                    Question.weighed(shape, end);
                }
            }
        }
        return mass;
    }

    private static Amount entered(Arguments arguments, Shape shape) {
        Optional<String> mass = arguments.text(MASS);
        Optional<String> density = arguments.text(DENSITY);
        if (mass.isPresent() == density.isPresent()) {
            throw new Refusal(
                    mass.isPresent() ? "conflict" : "missing-option",
                    MASS,
                    mass.isPresent() ? mass.get() + " and a density of " + density.orElse("") : "",
                    "either a weight (--mass 138 g) or a density (--density 0.95 g/cm3)",
                    mass.isPresent() ? "Leave out one of the two." : "Weigh the piece as it goes into the bath.");
        }
        if (mass.isPresent()) {
            return WeightText.read(MASS, mass.get());
        }
        boolean still = arguments.has(NO_FIZZ);
        Unit unit = Unit.GRAM_PER_CUBIC_CENTIMETRE;
        Amount entered = Allowed.aboveUpTo(
                        still ? 0 : unit.fromSi(Question.LIGHTEST_PIECE),
                        unit.fromSi(still ? Question.DENSEST_BODY : Question.HEAVIEST_PIECE),
                        unit)
                .parse(DENSITY, density.orElseThrow());
        double volume = shape.volume();
        double kilograms = entered.value() * volume + shape.insetMass();
        return switch (entered.spread()) {
            case NONE -> Amount.exact(Dimension.MASS, kilograms);
            case NORMAL -> Amount.normal(Dimension.MASS, kilograms, entered.standardDeviation() * volume);
            case RECTANGULAR ->
                Amount.between(
                        Dimension.MASS,
                        entered.low() * volume + shape.insetMass(),
                        entered.high() * volume + shape.insetMass());
        };
    }

    private static Bath bath(Arguments arguments) {
        Bath bath = arguments.value(BATH, Bath::parse).orElseGet(() -> Bath.at(Question.DEFAULT_TEMPERATURE));
        return arguments
                .value(BATH_SALT, (option, text) -> QuantityText.parseExact(option, text, Dimension.MASS))
                .map(bath::withSalt)
                .orElse(bath);
    }
}
