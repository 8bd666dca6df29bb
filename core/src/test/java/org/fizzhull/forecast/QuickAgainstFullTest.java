package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The quick voyage against the equation of motion over random pieces: shape, weight around what floats, and every weak
 * number from its prior. ANALYTIC in that both solve the same equations. The physics page asks for 98 % same outcomes,
 * 99.5 % where the margin is above 1 % of the displacement, times within 5 % or 5 s.
 */
class QuickAgainstFullTest {
    private static final String[] SHAPES = {
        "sphere(diameter=65 mm)",
        "sphere(diameter=45 mm)",
        "dome(diameter=80 mm)",
        "puck(diameter=70 mm, height=28 mm)",
        "egg(length=70 mm, diameter=50 mm)",
        "ring(diameter=90 mm, tube=30 mm)",
        "block(length=60 mm, width=40 mm, height=30 mm)",
        "bowl(diameter=90 mm, wall=15 mm)"
    };

    @Test
    void aSampleAgrees() {
        assertAgrees(new Tally(400));
    }

    @Test
    @Tag("proof")
    void tenThousandAgree() {
        Tally tally = new Tally(10_000);
        assertAgrees(tally);
        assertThat(tally.bias()).as("mean of quick less full rise time, s").isBetween(-3.0, 3.0);
    }

    private static void assertAgrees(Tally tally) {
        assertThat(tally.same()).as(tally.toString()).isGreaterThanOrEqualTo(0.98);
        assertThat(tally.sameWhereClear()).as(tally.toString()).isGreaterThanOrEqualTo(0.995);
        assertThat(tally.fizzTimesNear()).as(tally.toString()).isGreaterThanOrEqualTo(0.98);
        assertThat(tally.riseTimesNear()).as(tally.toString()).isGreaterThanOrEqualTo(0.9);
    }

    private static final class Tally {
        private final List<String> differences = new ArrayList<>();
        private int pieces;
        private int same;
        private int clear;
        private int sameClear;
        private int fizzNear;
        private int rises;
        private int risesNear;
        private double lag;

        Tally(int count) {
            List<VoyageForm> forms = new ArrayList<>();
            List<Shape> shapes = new ArrayList<>();
            for (String text : SHAPES) {
                shapes.add(ShapeText.read(text));
                forms.add(VoyageForm.of(ShapeText.read(text), Release.DROPPED));
            }
            SplittableRandom random = new SplittableRandom(20);
            for (int i = 0; i < count; i++) {
                int k = random.nextInt(SHAPES.length);
                one(shapes.get(k), forms.get(k), random);
            }
        }

        private void one(Shape shape, VoyageForm form, SplittableRandom random) {
            double mass = shape.volume() * (880 + 260 * random.nextDouble());
            Question question = Question.weighed(shape, mass).into(Question.IntoBath.DROPPED);
            Factors asked = Factors.standard().asked(question);
            List<Prior> priors = asked.priors();
            double[] values = new double[priors.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = priors.get(i).quantile((random.nextInt(1 << 30) + 0.5) / (1 << 30));
            }
            Draw d = Draw.of(asked.rows(), values);
            Bath bath = Bath.at(Units.celsius(38));
            double kelvin = bath.temperature() + d.temperatureError();
            double ratio = 1 + 0.5 * shape.surface() * d.sizeError() / shape.volume();
            QuickVoyage quick = new QuickVoyage(form, bath);
            Piece piece = new Piece(shape, mass + d.massError(), d.makeup());
            Launch launch = new Launch(piece, kelvin, ratio, 1, d.fizz(), d.voyage());
            quick.run(launch);
            Voyage full = FullVoyage.of(form, bath).run(launch);
            count(shape, mass, quick, full);
        }

        private void count(Shape shape, double mass, QuickVoyage quick, Voyage full) {
            pieces++;
            boolean agree = quick.outcome() == full.outcome();
            same += agree ? 1 : 0;
            boolean far = quick.margin() > 0.01;
            clear += far ? 1 : 0;
            sameClear += far && agree ? 1 : 0;
            fizzNear += near(quick.fizzTime(), full.fizzTime()) ? 1 : 0;
            if (agree && full.outcome() == Voyage.Outcome.RISES_LATER && !quick.grazes()) {
                double there = full.riseTime().orElseThrow();
                rises++;
                risesNear += near(quick.riseTime(), there) ? 1 : 0;
                lag += quick.riseTime() - there;
            }
            if (!agree || !near(quick.fizzTime(), full.fizzTime())) {
                differences.add(shape.kind() + " " + Math.round(mass * 1e4) / 10.0 + " g: " + quick.outcome() + " "
                        + Math.round(quick.riseTime()) + " " + Math.round(quick.fizzTime()) + " margin "
                        + Math.round(quick.margin() * 1e4) / 1e4 + " / " + full.outcome() + " " + full.riseTime() + " "
                        + Math.round(full.fizzTime()) + "\n");
            }
        }

        private static boolean near(double quick, double full) {
            return Math.abs(quick - full) <= Math.max(5, 0.05 * full);
        }

        double same() {
            return (double) same / pieces;
        }

        double sameWhereClear() {
            return (double) sameClear / clear;
        }

        double fizzTimesNear() {
            return (double) fizzNear / pieces;
        }

        double riseTimesNear() {
            return rises == 0 ? 0 : (double) risesNear / rises;
        }

        double bias() {
            return lag / rises;
        }

        @Override
        public String toString() {
            return "same " + same() + ", where clear " + sameWhereClear() + " of " + clear + ", fizz times near "
                    + fizzTimesNear() + ", rise times near " + riseTimesNear() + " of " + rises + ", bias " + bias()
                    + " s\n" + differences;
        }
    }
}
