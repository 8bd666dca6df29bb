package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.grams;

import java.util.List;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.meshed.MeshShape;
import org.junit.jupiter.api.Test;

/**
 * The error of a depth profile is one of the uncertain inputs. ANALYTIC: the same body, told with three errors of its
 * profile; none leaves the draws of the closed form, a large one widens the times and is named, and says so.
 */
class DepthErrorForecastTest {
    private static final Block BLOCK = Block.ofSides(0.06, 0.04, 0.03);

    @Test
    void entersTheDraws() {
        Forecast exact = ask(told(0));
        Forecast rough = ask(told(0.6));
        assertThat(inputs(exact)).doesNotContain(Input.DEPTH_PROFILE);
        assertThat(inputs(rough)).contains(Input.DEPTH_PROFILE);
        assertThat(width(rough)).isGreaterThan(1.1 * width(exact));
        assertThat(rough.drivers()).anyMatch(d -> d.input() == Input.DEPTH_PROFILE && d.total() > 0.03);
        assertThat(exact.drivers()).noneMatch(driver -> driver.input() == Input.DEPTH_PROFILE);
        assertThat(told(0.6).notices()).anyMatch(notice -> notice.code().equals("mesh-rough"));
        assertThat(told(0.005).notices()).noneMatch(notice -> notice.code().equals("mesh-rough"));
    }

    /** Half a percent, as of a usual mesh, is no driver and leaves the times as they are. */
    @Test
    void smallOnesDoNotMatter() {
        Forecast usual = ask(told(0.005));
        assertThat(inputs(usual)).contains(Input.DEPTH_PROFILE);
        assertThat(usual.drivers().subList(0, 3)).noneMatch(driver -> driver.input() == Input.DEPTH_PROFILE);
        assertThat(width(usual) / width(ask(told(0)))).isBetween(0.9, 1.1);
    }

    private static Forecast ask(Shape shape) {
        return FloatPredictor.standard().with(new Sampling(1, 4096)).forecast(Question.weighed(shape, grams(70)));
    }

    private static List<Input> inputs(Forecast forecast) {
        return forecast.factors().rows().stream().map(Factor::input).toList();
    }

    /** Of the fizz time, on a scale of ratios. */
    private static double width(Forecast forecast) {
        Interval time = forecast.fizzTime().orElseThrow();
        return Math.log(time.high() / time.low());
    }

    private static MeshShape told(double error) {
        DepthProfile all = with(BLOCK.depthProfile(DepthProfile.Exposure.ALL), error);
        return MeshShape.of("a.stl", "mm", ShapeMeshes.of(BLOCK, 4), exposure -> all);
    }

    private static DepthProfile with(DepthProfile exact, double error) {
        int n = 60;
        double[] depth = new double[n + 1];
        double[] volume = new double[n + 1];
        double[] area = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            depth[i] = exact.deepest() * i / n;
            volume[i] = exact.volume(depth[i]);
            area[i] = exact.area(depth[i]);
        }
        return new DepthProfile(depth, volume, area, error);
    }
}
