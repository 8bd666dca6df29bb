package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.forecast.DriedBall.BALL;
import static org.fizzhull.forecast.DriedBall.CENTRAL;
import static org.fizzhull.forecast.DriedBall.DAY;
import static org.fizzhull.forecast.DriedBall.DRAWN;
import static org.fizzhull.forecast.DriedBall.MIX;
import static org.fizzhull.forecast.DriedBall.codes;
import static org.fizzhull.forecast.DriedBall.filled;
import static org.fizzhull.forecast.DriedBall.forecast;
import static org.fizzhull.forecast.DriedBall.open;
import static org.fizzhull.forecast.DriedBall.text;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.junit.jupiter.api.Test;

/** What weighings of drying pieces do to a forecast of their drying, and what cannot be asked of one. */
class WeighedDryingForecastTest {
    private static DryLog log(double scale, double... weights) {
        List<Double> times = List.of(0.0, DAY, 2 * DAY);
        return new DryLog(List.of(new DryLog.Series("A", times, List.of(weights[0], weights[1], weights[2]), scale)));
    }

    @Test
    void whatWeighingsSay() {
        DryForecast plain = forecast(DRAWN, open(3 * DAY));
        DryingCourse course = plain.course();
        double[] own = {
            course.at(0).mass(), course.at(DAY).mass(), course.at(2 * DAY).mass()
        };
        DryForecast unused = forecast(CENTRAL.with(log(1e-3, own)), open(3 * DAY));
        assertThat(codes(unused))
                .contains("log-without-draws")
                .doesNotContain("log-misfit", "log-narrow", "gains-weight");
        assertThat(unused.ready()).isEqualTo(forecast(CENTRAL, open(3 * DAY)).ready());
        DryForecast used = forecast(DRAWN.with(log(1e-3, own)), open(3 * DAY));
        assertThat(used.log().orElseThrow().fits()).isTrue();
        boolean few = used.log().orElseThrow().effective() < 40;
        assertThat(codes(used).contains("log-narrow")).isEqualTo(few);
        assertThat(codes(used)).doesNotContain("log-without-draws", "log-misfit", "gains-weight");
        double[] slow = {
            course.at(0).mass(),
            course.at(DAY / 3).mass(),
            course.at(2 * DAY / 3).mass()
        };
        DryForecast narrow = forecast(DRAWN.with(log(2e-6, slow)), open(3 * DAY));
        long effective = Math.round(narrow.log().orElseThrow().effective());
        assertThat(effective).isLessThan(40);
        assertThat(text(narrow, "log-narrow")).contains("only " + effective + " of the draws");
        DryForecast gained = forecast(DRAWN.with(log(1e-4, 0.146, 0.148, 0.1496)), open(3 * DAY));
        assertThat(text(gained, "gains-weight")).contains("gained 3.6 g");
        assertThat(codes(gained)).contains("log-misfit").doesNotContain("log-narrow");
        assertThat(gained.course().readyAfter()).isEqualTo(course.readyAfter());
        assertThat(codes(plain)).doesNotContain("log-without-draws", "log-misfit", "log-narrow", "gains-weight");
    }

    /**
     * OTHER WAY: each draw is dried here, with its own mould, and weighs exp(-chi2/2); the misfit is that of the best draw over the
     * weighings less the free weight of the piece, the effective number (sum w)2 / sum w2.
     */
    @Test
    void weighingsWeighTheDraws() {
        Making making = filled(open(3 * DAY));
        Moulded made = Moulded.of(making);
        DryLog log = log(2e-4, 0.1455, 0.1446, 0.1443);
        DryLog.Series series = log.pieces().get(0);
        Factors asked = Factors.standard().asked(Question.of(BALL, making));
        PlannedDrying drying = new PlannedDrying(BALL, made.plan());
        double[] chi = new MonteCarlo(asked.priors(), asked.columns(), 128, 1, Workers.CALLER).draws(() -> inputs -> {
            Draw draw = Draw.of(asked.rows(), inputs);
            double ratio = Math.pow(1 + draw.sizeError() / 0.065, 3);
            Packing.Packed packed = Packing.of(made, BALL).of(draw, ratio);
            DryingCourse course =
                    drying.course(drying.input(packed), made.plan().phases(), 0, packed.making());
            return DryLog.Fit.deviation(series, DryLog.Fit.lost(course, series, ratio));
        });
        double least = Arrays.stream(chi).min().orElseThrow();
        double[] weights =
                Arrays.stream(chi).map(x -> Math.exp(-0.5 * (x - least))).toArray();
        double sum = Arrays.stream(weights).sum();
        double squares = Arrays.stream(weights).map(w -> w * w).sum();
        DryLog.Fit fit = forecast(DRAWN.with(log), open(3 * DAY)).log().orElseThrow();
        assertThat(fit.misfit()).isCloseTo(Math.sqrt(least / 2), within(0.02));
        assertThat(fit.effective()).isCloseTo(sum * sum / squares, within(0.02 * fit.effective()));
        assertThat(fit.stillToGo().low()).isNotNegative();
        assertThat(fit.stillToGo().high())
                .isLessThan(forecast(DRAWN, open(3 * DAY)).waterGone().high());
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        DryLog late = log(1e-3, 0.146, 0.145, 0.144);
        assertThatThrownBy(() -> forecast(CENTRAL.with(late), open(1.9 * DAY)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("after the end");
        assertThat(forecast(CENTRAL.with(late), open(2 * DAY)).end()).isEqualTo(2 * DAY);
        Making none = new Moulded.Filled(MIX, 0.146, Optional.empty(), DryingPlan.none());
        assertThatThrownBy(() -> CENTRAL.forecast(BALL, none)).isInstanceOf(IllegalArgumentException.class);
        Making much = new Moulded.Filled(MIX, 0.5, Optional.empty(), open(DAY).plan(BALL));
        assertThatThrownBy(() -> CENTRAL.readyAfter(BALL, much)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> CENTRAL.forecast(BALL, much)).isInstanceOf(Refusal.class);
    }
}
