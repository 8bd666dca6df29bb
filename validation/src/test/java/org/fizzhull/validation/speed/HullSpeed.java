package org.fizzhull.validation.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Attitude;
import org.fizzhull.hydrostatics.Attitudes;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.shape.text.ShapeText;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Still water and the shapes of the catalogue: one cut, one draft, one search for all attitudes at 0.9 of the water. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HullSpeed {
    private static final double RATIO = 0.9;
    private static final Vec3 LEANING = new Vec3(0.6, 0, 0.8);

    /** The piece. */
    @Param({
        "sphere(diameter=65 mm)",
        "puck(diameter=70 mm, height=28 mm)",
        "dome(diameter=80 mm)",
        "cube(side=50 mm)",
        "heart(width=70 mm, height=28 mm)"
    })
    public String shape;

    private final PlaneCut cut = new PlaneCut();
    private Hull hull;
    private double level;

    /** Lays a leaning plane through the centroid. */
    @Setup
    public void prepare() {
        hull = ShapeText.read(shape).hull().orElseThrow();
        level = LEANING.dot(hull.centroid());
    }

    /** Volume, moments and water plane of the hull below a leaning plane; m3. */
    @Benchmark
    public double cut() {
        hull.cut(LEANING.x(), LEANING.y(), LEANING.z(), level, cut);
        return cut.volume;
    }

    /** How deep it lies, held leaning; m. */
    @Benchmark
    public double draft() {
        return Draft.of(hull, LEANING, RATIO * hull.volume()).draft();
    }

    /** All stable attitudes. */
    @Benchmark
    public List<Attitude> attitudes() {
        return Attitudes.find(hull, hull.centroid(), RATIO);
    }
}
