package org.fizzhull.validation.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fizzhull.decide.Mould;
import org.fizzhull.decide.compare.Comparer;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions.Filling;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Workers;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A table of generic moulds on one thread, the whole chain from press over drying to the end of the bath. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CompareSpeed {
    /** Moulds in the table. */
    @Param({"2", "40"})
    public int moulds;

    /** Draws of each. */
    @Param({"128", "1008"})
    public int samples;

    private final List<Comparison.Candidate> candidates = new ArrayList<>();

    /** Presses the lemon recipe firmly into the first moulds of the catalogue and dries it for three days. */
    @Setup
    public void candidates() {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        DryingConditions room = DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 3 * 86400.0);
        for (Mould mould : Mould.catalogue().subList(0, moulds)) {
            Shape shape = mould.shape();
            Moulded.Pressed making = new Moulded.Pressed(blend, 30e3, 1.6, Filling.usual(shape), room.plan(shape));
            candidates.add(new Comparison.Candidate(mould, Question.of(shape, making)));
        }
    }

    /** The table. */
    @Benchmark
    public Comparison table() {
        Comparer comparer = Comparer.standard().with(new Sampling(1, samples));
        return comparer.compare(candidates, List.of(), Comparison.SortBy.FLOAT, Workers.Progress.SILENT);
    }
}
