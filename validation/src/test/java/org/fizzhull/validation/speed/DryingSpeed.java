package org.fizzhull.validation.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.shape.kind.Sphere;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A damp 65 mm ball, 2 % water and 12 % starch, two days on a rack at 20 C and 50 %, or a
 * fortnight: fine, and as in a draw. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class DryingSpeed {
    private static final double TWO_DAYS = 2 * 86_400.0;

    private final DryingInput mix = DryingInput.plain(1100, 0.40, 0.02, SorptionMixture.of(0.12, 0.088, 20, 0.72), 4.6);
    private final List<DryingPhase> rack = List.of(DryingPhase.open(
            new Opening(Sphere.ofDiameter(0.065).depthProfile(DepthProfile.Exposure.ALL), 1),
            RoomAir.of(293.15, 0.5),
            TWO_DAYS));
    private final List<DryingPhase> fortnight = List.of(rack.get(0).lasting(7 * TWO_DAYS));
    private final DryingParameters parameters = DryingParameters.standard();

    /** 60 cells, as a single course is computed. */
    @Benchmark
    public DryingCourse fineCourse() {
        return Drying.run(mix, rack, parameters, Resolution.FINE);
    }

    /** 60 cells over 14 days. */
    @Benchmark
    public DryingCourse fineFortnight() {
        return Drying.run(mix, fortnight, parameters, Resolution.FINE);
    }

    /** 16 cells, as a draw is computed. */
    @Benchmark
    public DryingCourse monteCarloCourse() {
        return Drying.run(mix, rack, parameters, Resolution.COARSE);
    }
}
