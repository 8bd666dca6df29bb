package org.fizzhull.validation.speed;

import java.util.concurrent.TimeUnit;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.fizzhull.voyage.result.Voyage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One voyage from the drop to the last crumb: the equation of motion in full, and the quick one of a draw. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class VoyageSpeed {
    private static final Bath BATH = Bath.at(Units.celsius(38));
    private static final FizzParameters FIZZ = FizzParameters.standard();
    private static final VoyageParameters WATER = VoyageParameters.standard();

    /** The piece. */
    @Param({"sphere(diameter=65 mm)", "dome(diameter=80 mm)"})
    public String shape;

    /** Its density, kg/m3: floats at once, and sinks first. */
    @Param({"950", "1040"})
    public double density;

    /** Relative tolerance of the full voyage. */
    @Param("1e-6")
    public double accuracy;

    /** Depths of the quick voyage. */
    @Param("200")
    public int depths;

    private FullVoyage full;
    private QuickVoyage quick;
    private Piece piece;

    /** Makes the form and its tables. */
    @Setup
    public void prepare() {
        Shape read = ShapeText.read(shape);
        VoyageForm form = VoyageForm.of(read, Release.DROPPED, depths);
        full = FullVoyage.of(form, BATH).accurateTo(accuracy);
        quick = new QuickVoyage(form, BATH);
        piece = new Piece(read, density * read.volume(), Piece.Makeup.usual());
    }

    /** With its series and events. */
    @Benchmark
    public Voyage full() {
        return full.run(piece, FIZZ, WATER);
    }

    /** Outcome and times alone; the fizz time, s. */
    @Benchmark
    public double quick() {
        quick.run(Launch.of(piece, BATH, FIZZ, WATER));
        return quick.fizzTime();
    }

    /** Attitudes and tables of the form, once a question. */
    @Benchmark
    public VoyageForm form() {
        return VoyageForm.of(piece.shape(), Release.DROPPED);
    }
}
