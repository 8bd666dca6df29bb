package org.fizzhull.gallery;

import static org.fizzhull.quantity.Decimals.text;
import static org.fizzhull.quantity.Units.*;

import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import org.fizzhull.chain.*;
import org.fizzhull.decide.*;
import org.fizzhull.decide.advise.*;
import org.fizzhull.forecast.*;
import org.fizzhull.forecast.making.*;
import org.fizzhull.forecast.measured.*;
import org.fizzhull.forecast.prior.*;
import org.fizzhull.forecast.question.*;
import org.fizzhull.learn.*;
import org.fizzhull.medium.*;
import org.fizzhull.mesh.*;
import org.fizzhull.mesh.reading.*;
import org.fizzhull.pressing.*;
import org.fizzhull.quantity.*;
import org.fizzhull.recipe.*;
import org.fizzhull.shape.*;
import org.fizzhull.shape.factory.*;
import org.fizzhull.shape.meshed.*;
import org.fizzhull.shape.text.*;
import org.fizzhull.uncertainty.*;

/**
 * The tasks of core/docs/gallery.md. {@link GalleryTest} prints each body as it stands here with what it writes, so a
 * line here is a line of the page: keep each below 16 lines. The comment above a method is its heading.
 */
final class Gallery {
    private final PrintStream out;
    private final Executor executor;

    Gallery(PrintStream out, Executor executor) {
        this.out = out;
        this.executor = executor;
    }

    // Will it float, and how sure is that?
    void willItFloat() {
        var ball = Shapes.sphere(millimetres(65));
        var question =
                Question.weighed(ball, grams(138)).measured(Measured.NOMINAL).in(Bath.at(celsius(38)));
        var forecast = FloatPredictor.standard().forecast(question);
        out.println(forecast.likelihoodToTheEnd().orElseThrow().words() + ", " + text(inGrams(forecast.spare()), 2)
                + " g below its float limit");
        var chance = forecast.probability().orElseThrow();
        out.println("to the end " + text(chance.floatsToTheEnd(), 2) + ", at once " + text(chance.floatsAtOnce(), 2));
    }

    // Ask it of a thousand pieces: the cheap question
    void theCheapQuestion() {
        var check = FloatPredictor.standard().check(Question.weighed(Shapes.dome(millimetres(80)), grams(129)));
        int afloat = 0;
        for (int i = 0; i < 1000; i++) {
            afloat += check.floats(grams(110 + i * 0.05)).toTheEnd() ? 1 : 0;
        }
        out.println(afloat + " of 1000 weights float to the end by the central values, the heaviest "
                + text(inGrams(check.heaviest()), 4) + " g");
    }

    // Which way up, how deep, and does it stand?
    void whichWayUp() {
        var star = Shapes.star(5, millimetres(80), millimetres(45), millimetres(30));
        var predictor = FloatPredictor.standard().with(new Sampling(1, 0));
        for (var rest :
                predictor.forecast(Question.weighed(star, 950 * star.volume())).attitudes()) {
            out.println(text(inMillimetres(rest.draft()), 3) + " mm under water, metacentric height "
                    + text(inMillimetres(rest.gm()), 2) + " mm, in "
                    + text(100 * rest.share().orElse(1), 2)
                    + " % of random drops");
        }
    }

    // Pieces of one batch differ: what weight to aim for?
    void aimFor() {
        var dome = Shapes.dome(millimetres(80));
        var batch = Question.weighed(dome, grams(131)).spread(Priors.normal(0, grams(4)));
        var forecast = FloatPredictor.standard().forecast(batch);
        var aim = forecast.aim().orElseThrow();
        out.println("aim for at most " + text(inGrams(aim.aimFor()), 4) + " g, never above "
                + text(inGrams(aim.neverAbove()), 4) + " g");
        out.println("at least 9 of 10 float: chance "
                + text(forecast.share().orElseThrow().nineOfTen(), 2));
    }

    // What decides it?
    void whatDecides() {
        var forecast = FloatPredictor.standard().forecast(Question.weighed(Shapes.sphere(millimetres(65)), grams(142)));
        for (var driver : forecast.drivers().subList(0, 3)) {
            out.println(driver.input().label() + ": " + text(100 * driver.total(), 2) + " % of the variance");
        }
        forecast.next().ifPresent(next -> out.println("measure next: " + next.kind()));
    }

    // From a recipe: what does it weigh in the mould, does it hold?
    void pressARecipe() {
        var mix = Mix.of(lemon());
        var damp = mix.press(Shapes.sphere(millimetres(65)), PressWord.FIRM.pressure());
        var pressed = damp.pressed();
        out.println(text(inGrams(damp.mass()), 4) + " g damp, it "
                + pressed.feel().words() + ", " + text(100 * pressed.solidFraction(), 3) + " % solid");
    }

    // From the bowl to the bath, stage by stage
    void theChain() {
        var ball = Shapes.sphere(millimetres(65));
        var rack = DryingConditions.open(RoomAir.of(celsius(21), percent(55)), hours(36));
        var dried = Mix.of(lemon()).fill(ball, grams(137)).dry(rack);
        var voyage = dried.voyage(Bath.at(celsius(38)));
        out.println("dry after " + Math.round(inHours(dried.readyAfter().orElseThrow())) + " h at "
                + text(inGrams(dried.mass()), 4) + " g with "
                + text(100 * dried.fizzLeft(), 3) + " % of its fizz");
        out.println(voyage.outcome().words() + ", fizzes for " + text(inMinutes(voyage.fizzTime()), 2) + " min");
        var chance = FloatPredictor.standard()
                .outcome(dried.question())
                .probability()
                .orElseThrow();
        out.println("chance to float to the end " + text(chance.floatsToTheEnd(), 2));
    }

    // A recipe without a file
    void aRecipe() {
        Recipe recipe = new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .name("Harbour foam")
                .dry("sodium bicarbonate", "2 cups")
                .dry("citric acid", "1 cup")
                .wet("sweet almond oil", "1 tbsp")
                .build();
        var blend = Blend.of(recipe);
        out.println(text(inGrams(recipe.mass()), 4) + " g, true density "
                + text(inGramsPerCubicCentimetre(blend.trueDensity()), 3) + " g/cm3, "
                + text(blend.moles().gas(), 3) + " mol of gas per kg");
    }

    // A stopwatch tells more than a table
    void aStopwatch() {
        var question = Question.weighed(Shapes.sphere(millimetres(65)), grams(142));
        var predictor = FloatPredictor.standard()
                .with(Observations.none()
                        .rose(TimedPiece.rose(95).weighing(grams(150)).leaving(millimetres(50))));
        var forecast = predictor.forecast(question);
        var effect = forecast.narrowing().orElseThrow();
        out.println("to the end " + text(forecast.probability().orElseThrow().floatsToTheEnd(), 2) + ", before "
                + text(effect.probability().orElseThrow().floatsToTheEnd(), 2));
    }

    // A piece from an STL file
    void aMesh() {
        double[] xyz = {-.04, -.04, 0, .04, -.04, 0, .04, .04, 0, -.04, .04, 0, 0, 0, .06};
        int[] corners = {0, 2, 1, 0, 3, 2, 0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4};
        ByteBuffer file = StlWriter.binary(new TriangleMesh(xyz, corners), "a pyramid", 1e-3);
        var read = MeshReader.read(file, "pyramid.stl", Unit.MILLIMETRE);
        Shape pyramid = MeshShape.of("pyramid.stl", "mm", read.mesh()).with(read.notices());
        var floats = FloatPredictor.standard().floats(pyramid, grams(122));
        out.println(text(inCubicCentimetres(pyramid.volume()), 4) + " cm3, at the drop "
                + text(inGrams(floats.spareAtDrop()), 2) + " g to spare");
    }

    // Your own bench: scale, hygrometer, moulds, powders
    void yourBench() {
        var ball = Shapes.sphere(millimetres(65));
        var bench = Bench.none()
                .weighingOn(grams(0.1))
                .reading(0.02) // spread of the hygrometer, relative humidity
                .filled(ball, grams(146)) // water that the mould holds
                .cup("corn starch", Map.of("loose cup", "150 g"));
        var mix = bench.own(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC));
        var recipe = mix.dry("baking soda", "300 g").dry("corn starch", "60 g").build();
        out.println(recipe.dry().size() + " powders");
        var question = bench.on(Question.weighed(ball, grams(145)));
        var forecast = FloatPredictor.standard().with(bench.factors()).forecast(question);
        out.println(text(inGrams(forecast.spareAtDrop().median()), 2) + " g to spare");
    }

    // The smallest change that makes it float
    void theSmallestChange() {
        var design = new Design(
                Optional.of(lemon()),
                Shapes.sphere(millimetres(65)),
                new Design.Filling.Fill(grams(150), Optional.empty()),
                Optional.empty(),
                Bath.at(celsius(38)),
                Question.IntoBath.DROPPED,
                false,
                Measured.CALIPERS,
                Scale.usual(grams(150)));
        var advice = Adviser.standard().with(new Sampling(1, 512)).advise(design, Adviser.Goal.nineOfTen());
        advice.best()
                .ifPresent(best -> out.println("chance now " + text(advice.now().chance(), 2) + ", with "
                        + best.steps().size() + " change "
                        + text(best.appraisal().chance(), 2)));
    }

    // Threads of your own, a progress bar, a way out
    void threads() {
        var bar = new AtomicLong();
        var workers = Workers.on(executor).watched(draws -> {
            bar.set(draws);
            return draws <= 1000; // in a program: whether its window is still open
        });
        try {
            FloatPredictor.standard()
                    .with(workers)
                    .forecast(Question.weighed(Shapes.sphere(millimetres(65)), grams(138)));
        } catch (CancellationException e) {
            out.println("given up");
        }
    }

    // Bad input tells how to mend it
    void badInput() {
        try {
            ShapeText.read("bowl(diameter=90 mm, wall=48 mm)");
        } catch (Refusal refusal) {
            out.println(refusal.field() + ": read " + refusal.read() + ", allowed " + refusal.allowed());
            out.println(refusal.hint());
        }
    }

    private static Recipe lemon() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("Lighthouse lemon")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .wet("lemon fragrance", "3 g")
                .build();
    }
}
