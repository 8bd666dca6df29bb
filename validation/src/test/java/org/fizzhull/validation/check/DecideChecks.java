package org.fizzhull.validation.check;

import static org.fizzhull.quantity.Units.celsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparer;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions.Filling;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Ranking;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Ranking and selection with closed or published answers, and what makers say of moulds as the order of a table. */
public final class DecideChecks extends Bindings {
    private static final long SEED = 1;
    private static final IngredientTable TABLE = IngredientTable.standard();
    private static final String BALL = "sphere(diameter=65 mm)";
    private static final String DOME = "dome(diameter=80 mm)";
    private static final String PUCK = "puck(diameter=80 mm, height=30 mm, edge=8 mm)";
    private static final String TABLET = "puck(diameter=60 mm, height=25 mm, edge=4 mm)";
    private static final String STAR = "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)";
    private static final String BOWL = "bowl(diameter=90 mm, wall=15 mm)";

    public DecideChecks() {
        super("decide");
        bind("beats", DecideChecks::beats);
        bind("crn", DecideChecks::sharedVariance);
        bind("perfect-information", DecideChecks::perfectInformation);
        bind("selection", DecideChecks::selection);
        bind("table", in -> met(in.word("rule")) ? 1 : 0);
        bind("surface", in -> surface(in.number("g_per_cm3") * 1e3) ? 1 : 0);
    }

    private static double beats(Inputs in) {
        double[][] pair = pair(in.number("r"), (int) in.number("draws"));
        return Ranking.chanceAbove(
                line(pair[0], in.number("delta"), in.number("s1")), line(pair[1], 0, in.number("s2")));
    }

    private static double sharedVariance(Inputs in) {
        double[][] pair = pair(in.number("r"), (int) in.number("draws"));
        double[] difference = new double[pair[0].length];
        for (int i = 0; i < difference.length; i++) {
            difference[i] = pair[0][i] - pair[1][i];
        }
        return variance(difference) / (variance(pair[0]) + variance(pair[1]));
    }

    private static double perfectInformation(Inputs in) {
        if (in.has("exercise")) {
            in.word("exercise");
            double[] saves = new double[20];
            Arrays.fill(saves, 0, 6, 79_063);
            Arrays.fill(saves, 6, 17, 11_042);
            Arrays.fill(saves, 17, 20, -63_781);
            return Ranking.opportunityLoss(Ranking.best(new double[][] {saves, new double[20]}), saves);
        }
        double[] better = line(normals(1, (int) in.number("draws"))[0], in.number("delta"), 1);
        return Ranking.opportunityLoss(Ranking.best(new double[][] {better, new double[better.length]}), better);
    }

    private static double selection(Inputs in) {
        double[][] means = normals((int) in.number("k"), (int) in.number("draws"));
        means[0] = line(means[0], in.number("h"), 1);
        return Ranking.chancesOfBest(means)[0];
    }

    private static boolean met(String rule) {
        Recipe lemon = ExampleRecipes.lemon(TABLE);
        return switch (rule) {
            case "bowl" -> {
                Comparison table = compared(
                        Comparison.SortBy.FLOAT,
                        pressed(BALL, lemon),
                        pressed(DOME, lemon),
                        pressed(PUCK, lemon),
                        pressed(BOWL, lemon));
                yield table.best()
                        .map(best -> best.shape().kind().equals("bowl"))
                        .orElse(false);
            }
            case "clay" -> firstIs(lemon, lemon, ExampleRecipes.harbourClay(TABLE));
            case "foam" -> firstIs(ExampleRecipes.seaFoam(TABLE), lemon, ExampleRecipes.seaFoam(TABLE));
            case "flat-dries-sooner" -> {
                List<String> order = order(compared(
                        Comparison.SortBy.DRY,
                        pressed(BALL, lemon),
                        pressed("sphere(diameter=40 mm)", lemon),
                        pressed("puck(diameter=60 mm, height=25 mm, edge=4 mm)", lemon)));
                yield order.get(2).equals(BALL);
            }
            case "big-fizzes-longer" -> {
                String small = "sphere(diameter=45 mm)";
                String big = "sphere(diameter=80 mm)";
                List<String> order = order(
                        compared(Comparison.SortBy.FIZZ, dense(small, 1000), dense(BALL, 1000), dense(big, 1000)));
                yield order.equals(List.of(big, BALL, small));
            }
            default -> throw new IllegalArgumentException(rule);
        };
    }

    /** Whether pieces of one density, kg/m3, stand in the order of their surface per volume. */
    private static boolean surface(double density) {
        Comparison table = compared(
                Comparison.SortBy.FLOAT,
                dense(BALL, density),
                dense(PUCK, density),
                dense(DOME, density),
                dense(TABLET, density),
                dense(STAR, density));
        return falling(table.rows().stream()
                .mapToDouble(ComparedPiece::surfaceToVolume)
                .toArray());
    }

    /** Whether a recipe stands above the other by more than nobody would notice. */
    private static boolean firstIs(Recipe expected, Recipe... recipes) {
        Comparison table = compared(Comparison.SortBy.FLOAT, pressed(BALL, recipes[0]), pressed(BALL, recipes[1]));
        return table.best()
                .map(best -> best.recipe().orElseThrow().name().equals(expected.name()))
                .orElse(false);
    }

    private static boolean falling(double[] values) {
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] < values[i - 1])) {
                return false;
            }
        }
        return true;
    }

    private static List<String> order(Comparison table) {
        return table.rows().stream().map(ComparedPiece::shape).map(Shape::text).toList();
    }

    private static Comparison compared(Comparison.SortBy sort, Comparison.Candidate... candidates) {
        Comparer comparer = Comparer.standard().with(new Sampling(SEED, 512));
        return comparer.compare(List.of(candidates), List.of(), sort, Workers.Progress.SILENT);
    }

    private static Comparison.Candidate pressed(String text, Recipe recipe) {
        Shape shape = ShapeText.read(text);
        var plan =
                DryingConditions.open(RoomAir.of(celsius(21), 0.5), 3 * 86400.0).plan(shape);
        return Comparison.Candidate.of(
                Question.of(shape, new Moulded.Pressed(Blend.of(recipe), 30e3, 1.6, Filling.usual(shape), plan)));
    }

    private static Comparison.Candidate dense(String text, double density) {
        Shape shape = ShapeText.read(text);
        return Comparison.Candidate.of(
                Question.of(shape, new Making.Weighed(density * shape.volume(), Optional.empty(), Optional.empty())));
    }

    /** Two unit normals of a correlation. */
    private static double[][] pair(double r, int draws) {
        double[][] pair = normals(2, draws);
        for (int i = 0; i < draws; i++) {
            pair[1][i] = r * pair[0][i] + Math.sqrt(1 - r * r) * pair[1][i];
        }
        return pair;
    }

    private static double[][] normals(int count, int draws) {
        double[][] columns = new double[count][draws];
        new MonteCarlo(Collections.nCopies(count, Priors.normal(0, 1)), draws, SEED, Workers.CALLER)
                .draws(() -> new Model() {
                    private final List<Double> last = new ArrayList<>();

                    @Override
                    public double at(double[] inputs) {
                        last.clear();
                        for (double input : inputs) {
                            last.add(input);
                        }
                        return inputs[0];
                    }

                    @Override
                    public void keep(int draw) {
                        for (int i = 0; i < count; i++) {
                            columns[i][draw] = last.get(i);
                        }
                    }
                });
        return columns;
    }

    private static double[] line(double[] values, double by, double scale) {
        return Arrays.stream(values).map(value -> by + scale * value).toArray();
    }

    private static double variance(double[] values) {
        return Statistics.variance(values, Statistics.mean(values));
    }
}
