package org.fizzhull.validation.speed;

import java.util.concurrent.TimeUnit;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The depth profile of a shape: made once a question, looked up at every step. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ProfileSpeed {
    /** The piece. */
    @Param({
        "sphere(diameter=65 mm)",
        "dome(diameter=80 mm)",
        "cube(side=50 mm)",
        "heart(width=70 mm, height=28 mm)",
        "egg(length=70 mm, diameter=50 mm)",
        "bowl(diameter=90 mm, wall=15 mm)"
    })
    public String shape;

    private Shape piece;
    private DepthProfile profile;

    /** Reads the shape. */
    @Setup
    public void prepare() {
        piece = ShapeText.read(shape);
        profile = piece.depthProfile(DepthProfile.Exposure.ALL);
    }

    /** The table, from all faces. */
    @Benchmark
    public DepthProfile table() {
        return piece.depthProfile(DepthProfile.Exposure.ALL);
    }

    /** The volume left at a third of the depth; m3. */
    @Benchmark
    public double volumeLeft() {
        return profile.volume(profile.deepest() / 3);
    }
}
