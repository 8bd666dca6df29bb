package org.fizzhull.validation;

import java.util.List;
import org.fizzhull.drying.Drying;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.DryingInput;
import org.fizzhull.drying.DryingParameters;
import org.fizzhull.drying.DryingPhase;
import org.fizzhull.drying.Opening;
import org.fizzhull.drying.Resolution;
import org.fizzhull.drying.SorptionMixture;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.shape.Block;
import org.fizzhull.shape.DepthProfile;
import org.fizzhull.shape.Dome;
import org.fizzhull.shape.Exposure;
import org.fizzhull.shape.Puck;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeText;
import org.fizzhull.shape.Sphere;

/** Drying with a linear isotherm and no reaction is diffusion with a constant coefficient: Crank's series apply. */
final class Diffusion {
    /** Half thickness or radius of the bodies, m. */
    private static final double SIZE = 0.03;

    private static final double SLOPE = 100;
    private static final double RHO = 1000;
    private static final double START = 0.8;
    private static final RoomAir AIR = RoomAir.of(293.15, 0.3);
    private static final DryingInput MIX =
            DryingInput.plain(RHO, 0.4, 0, SorptionMixture.of(1, SLOPE / RHO / 1e-9, 1, 1e-9), 0);
    private static final Resolution RESOLUTION = new Resolution(150, 1, 1e-5);

    private Diffusion() {}

    /** Fraction of the whole change done at Fourier number Fo. */
    static double done(Inputs in) {
        double fo = in.number("Fo");
        return fraction(course(body(in.word("body")), 1, in.word("Bi"), fo), fo);
    }

    /** Time by the depth profile with correction c over the exact time, at the fraction the exact course has at Fo. */
    static double timeRatio(Inputs in) {
        double fo = in.number("Fo");
        double exact = in.number("done");
        DryingCourse course = course(body(in.word("body")), in.number("c"), "infinite", 2 * fo);
        double low = 0;
        double high = 2 * fo;
        while (high - low > 1e-6 * fo) {
            double middle = 0.5 * (low + high);
            if (fraction(course, middle) < exact) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low / fo;
    }

    static Shape shape(Inputs in) {
        return ShapeText.read(in.word("shape"));
    }

    private static double fraction(DryingCourse course, double fo) {
        double time = Math.min(course.end(), fo * SIZE * SIZE / diffusivity());
        return (course.at(0).water() - course.at(time).water()) / course.removable();
    }

    private static double pores() {
        return Drying.poreDiffusivity(AIR.diffusivity(), MIX, DryingParameters.standard());
    }

    private static double diffusivity() {
        return pores() * AIR.saturationDensity() / SLOPE;
    }

    private static DryingCourse course(DepthProfile profile, double c, String biot, double fo) {
        double transfer = biot.equals("infinite") ? 1e5 : Double.parseDouble(biot) * pores() / SIZE;
        var parameters = new DryingParameters(1, transfer, 1, 0.95, 0, 0, 0, 1, 1, 1, 1, START, 1, 3);
        double seconds = fo * SIZE * SIZE / diffusivity();
        var phase = DryingPhase.open(new Opening(profile, c), AIR, seconds);
        return Drying.run(MIX, List.of(phase), parameters, RESOLUTION);
    }

    private static DepthProfile body(String name) {
        double d = 2 * SIZE;
        return switch (name) {
            case "slab" -> new DepthProfile(new double[] {0, SIZE}, new double[] {d, 0}, new double[] {2, 2}, 0);
            case "rod" -> rod();
            case "ball" -> Sphere.ofDiameter(d).depthProfile(Exposure.ALL);
            case "dome on its tray" -> Dome.ofDiameter(d).depthProfile(Exposure.TRAY);
            case "dome on a rack" -> Dome.ofDiameter(d).depthProfile(Exposure.ALL);
            case "puck" -> Puck.ofDiameterAndHeight(d, d).depthProfile(Exposure.ALL);
            case "cube" -> Block.ofSides(d, d, d).depthProfile(Exposure.ALL);
            default -> throw new IllegalArgumentException("unknown body " + name);
        };
    }

    /** A metre of a long cylinder, ends closed. */
    private static DepthProfile rod() {
        int n = 200;
        double[] depth = new double[n + 1];
        double[] volume = new double[n + 1];
        double[] area = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            depth[i] = SIZE * i / n;
            double r = SIZE - depth[i];
            volume[i] = Math.PI * r * r;
            area[i] = 2 * Math.PI * r;
        }
        return new DepthProfile(depth, volume, area, 0);
    }
}
